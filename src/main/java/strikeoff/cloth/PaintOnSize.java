package strikeoff.cloth;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Measures;

/**
 * Paint on loom-state cloth: its film lies on size and wax, which leave in the wash.
 *
 * @param paints the paints that are printed
 * @param path where the plan says that the cloth is as it came off the loom
 */
public record PaintOnSize(List<String> paints, PlanPath path) implements Evidence {

  public PaintOnSize {
    paints = List.copyOf(paints);
  }

  /** Soda and detergent for some cloth, in words. */
  public String scour(Measures units) {
    return Scour.text(units);
  }
}
