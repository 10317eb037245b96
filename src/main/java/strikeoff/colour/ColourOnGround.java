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
 * @param overOthers whether it is a covering colour that lies over another separation wherever a
 *     design uses it, so that the ground need not be what it stands out from
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
    boolean overOthers,
    String strengthening,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public ColourOnGround {
    marks = List.copyOf(marks);
  }
}
