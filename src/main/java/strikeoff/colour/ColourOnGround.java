package strikeoff.colour;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Colour;
import strikeoff.policy.Limit;
import strikeoff.units.Ratio;

/**
 * How a printed paste stands out from the cloth's ground.
 *
 * @param translucent true for paint of no opaque grade, which hides a part of what lies under it
 * @param tooLight true for a colour lighter than the ground that comes out as a shade of it
 * @param named the plan's colour
 * @param look estimate of it on this ground, wet
 * @param extremes that look at the least and at the most that it hides
 * @param washed estimate of it on this ground after wash-off, on a fibre that takes the dye whole
 * @param lightness L* of the named colour
 * @param groundLightness L* of the ground
 * @param lighter how much lighter than the ground the named colour is, in L*; negative if darker
 * @param mostLighter from which on it counts as lighter
 * @param veryDark L* of a ground on which nothing translucent shows that is lighter
 * @param fairlyDark L* of one on which such a colour comes out dull
 * @param difference CIEDE2000 between {@code look} and the ground
 * @param shows CIEDE2000 from which on a colour shows
 * @param washedDifference CIEDE2000 between {@code washed} and the ground
 * @param missed CIEDE2000 between {@code look} and the named colour
 * @param over the pastes that it lies on wherever it is printed, if it isn't seen on the ground;
 *     then the ground need not be what it stands out from
 * @param differenceOver CIEDE2000 between it and what it lies on; 0 if it lies on the ground, if it
 *     is seen there, or if it is transparent and nothing that covers lies under it
 * @param timesAsStrong how much stronger it would have to be mixed to show after wash-off; empty if
 *     no mix of it would show
 * @param paler the darkest ground on which it would show, L*; empty unless it is too light
 * @param deeper the lightest colour that would show in its place, L*; likewise
 */
public record ColourOnGround(
    String paste,
    boolean transparent,
    boolean translucent,
    boolean tooLight,
    Colour named,
    Colour ground,
    Colour look,
    List<Colour> extremes,
    Colour washed,
    Ratio lightness,
    Ratio groundLightness,
    Ratio lighter,
    Limit mostLighter,
    Limit veryDark,
    Limit fairlyDark,
    Ratio difference,
    Limit shows,
    Ratio washedDifference,
    Ratio missed,
    List<String> over,
    Ratio differenceOver,
    Optional<Ratio> timesAsStrong,
    OptionalInt paler,
    OptionalInt deeper,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public ColourOnGround {
    extremes = List.copyOf(extremes);
    over = List.copyOf(over);
    marks = List.copyOf(marks);
  }
}
