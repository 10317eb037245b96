package strikeoff.colour;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Colour;
import strikeoff.policy.Limit;
import strikeoff.units.Ratio;

/**
 * A colour that comes about where two separations overlap, beside the listed paste that is nearest
 * to it.
 *
 * @param look estimate of the overlap
 * @param paste the nearest paste that is neither of the two
 * @param pasteLook its look on this ground
 * @param difference CIEDE2000 between {@code look} and {@code pasteLook}
 * @param apart CIEDE2000 from which on two are told apart
 * @param path of the upper separation
 */
public record ThirdColour(
    String design,
    String lowerPaste,
    String upperPaste,
    Colour look,
    String paste,
    Colour pasteLook,
    Ratio difference,
    Limit apart,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public ThirdColour {
    related = List.copyOf(related);
  }
}
