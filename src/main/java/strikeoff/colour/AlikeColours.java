package strikeoff.colour;

import java.util.List;
import strikeoff.plan.Colour;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Ratio;

/**
 * How far apart two printed pastes look on this ground.
 *
 * @param first the paste listed first
 * @param second the other one
 * @param difference CIEDE2000 between their looks on the ground
 * @param path of the second paste's colour
 */
public record AlikeColours(
    String first,
    Colour firstLook,
    String second,
    Colour secondLook,
    Ratio difference,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public AlikeColours {
    related = List.copyOf(related);
  }
}
