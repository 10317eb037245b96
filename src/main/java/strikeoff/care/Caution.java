package strikeoff.care;

import java.util.List;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Protection;

/**
 * A caution, shown where the plan calls for it. It is no medical or legal advice: the product's
 * safety data sheet and local codes come first.
 *
 * @param hazard what can hurt
 * @param step number of the step; 0 for the plan as a whole
 * @param where the step in words
 * @param needed what is worn
 * @param missing what of it the plan doesn't list
 * @param figures computed values that belong to it, may be empty
 */
public record Caution(
    Hazard hazard,
    int step,
    String where,
    List<Protection> needed,
    List<Protection> missing,
    String figures,
    PlanPath path) {

  public Caution {
    needed = List.copyOf(needed);
    missing = List.copyOf(missing);
  }

  /** What to mind. */
  public String text() {
    return hazard.text();
  }

  /** Who states it. */
  public String body() {
    return hazard.body();
  }
}
