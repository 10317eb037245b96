package strikeoff.care;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.plan.Protection;

/**
 * A caution, shown where the plan calls for it. It is no medical or legal advice: the product's
 * safety data sheet and local codes come first.
 *
 * @param hazard what can hurt
 * @param needed what is worn
 * @param missing what of it the plan doesn't list
 * @param substances names of what does the harm, where it isn't always the same; may be empty
 */
public record Caution(
    Hazard hazard,
    Workplace where,
    List<Protection> needed,
    List<Protection> missing,
    List<String> substances,
    Hurt hurt,
    PlanPath path) {

  public Caution {
    needed = List.copyOf(needed);
    missing = List.copyOf(missing);
    substances = List.copyOf(substances);
  }

  /** Number of the step; 0 for the plan as a whole. */
  public int step() {
    return where.number();
  }
}
