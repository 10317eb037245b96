package strikeoff.colour;

import strikeoff.document.PlanPath;
import strikeoff.plan.Colour;
import strikeoff.units.Area;

/**
 * The colour where two separations of a design lie over each other.
 *
 * @param lower number of the separation listed first
 * @param upper number of the one listed after it
 * @param look estimate of its wet look on this ground
 * @param washed estimate after wash-off
 * @param least area that they must share, since both have to fit into their rectangles
 * @param expected area that they share if they fall independently of each other
 * @param most area that they can share
 * @param path of the upper separation
 */
public record Overprint(
    String design,
    int lower,
    String lowerPaste,
    int upper,
    String upperPaste,
    Colour look,
    Colour washed,
    Model model,
    Area least,
    Area expected,
    Area most,
    PlanPath path) {

  /** True if films tell how much they share. */
  public boolean measured() {
    return least.equals(most);
  }

  /** How the estimate was made. */
  public enum Model {
    /** Both absorb; which of them is printed first changes nothing in the estimate. */
    ABSORPTIONS_ADD,
    /** The upper one hides a part and tints the rest. */
    UPPER_HIDES_A_PART,
    /** The upper one covers. */
    UPPER_HIDES
  }
}
