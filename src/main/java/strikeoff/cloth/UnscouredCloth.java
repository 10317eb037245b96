package strikeoff.cloth;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Measures;

/**
 * Dye on cloth that was not washed: its finish and its wax still lie on the fibre.
 *
 * @param dyes the dye pastes that are printed
 * @param loomState true for cloth as it comes off the loom
 * @param path where the plan says whether the cloth was washed
 */
public record UnscouredCloth(List<String> dyes, boolean loomState, PlanPath path)
    implements Evidence {

  public UnscouredCloth {
    dyes = List.copyOf(dyes);
  }

  /** Soda and detergent for some cloth, in words. */
  public String scour(Measures units) {
    return Scour.text(units);
  }
}
