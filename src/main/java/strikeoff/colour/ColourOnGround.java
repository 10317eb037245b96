package strikeoff.colour;

import java.util.List;
import strikeoff.plan.Colour;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Ratio;

/**
 * How a printed paste stands out from the cloth's ground.
 *
 * @param named the plan's colour
 * @param look estimate of it on this ground, wet
 * @param washed estimate of it on this ground after wash-off, on a fibre that takes the dye whole
 * @param lightness L* of the named colour
 * @param groundLightness L* of the ground
 * @param lighter how much lighter than the ground the named colour is, in L*; negative if darker
 * @param difference CIEDE2000 between {@code look} and the ground
 * @param washedDifference CIEDE2000 between {@code washed} and the ground
 * @param missed CIEDE2000 between {@code look} and the named colour
 * @param over the pastes that it lies on wherever it is printed, if it is a covering colour; then
 *     the ground need not be what it stands out from
 * @param differenceOver CIEDE2000 between it and what it lies on; 0 if it lies on the ground
 * @param strengthening how much stronger it would have to be mixed to show after wash-off, in words
 */
public record ColourOnGround(
    String paste,
    boolean transparent,
    Colour named,
    Colour ground,
    Colour look,
    Colour washed,
    Ratio lightness,
    Ratio groundLightness,
    Ratio lighter,
    Ratio difference,
    Ratio washedDifference,
    Ratio missed,
    List<String> over,
    Ratio differenceOver,
    String strengthening,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public ColourOnGround {
    over = List.copyOf(over);
    marks = List.copyOf(marks);
  }
}
