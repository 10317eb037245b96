package strikeoff.care;

import java.util.List;
import strikeoff.document.PlanPath;
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
 * @param substances names of what does the harm, where it isn't always the same; may be empty
 * @param figures computed values that belong to it, may be empty
 */
public record Caution(
    Hazard hazard,
    int step,
    String where,
    List<Protection> needed,
    List<Protection> missing,
    List<String> substances,
    String figures,
    PlanPath path) {

  public Caution {
    needed = List.copyOf(needed);
    missing = List.copyOf(missing);
    substances = List.copyOf(substances);
  }

  /** The place in words: {@code step 4, fix by soak}, or a place that is no step. */
  public String place() {
    return step == 0 ? where : "step " + step + ", " + where;
  }

  /** The same inside a sentence: {@code step 4 (fix by soak)}. */
  public String named() {
    return step == 0 ? where : "step " + step + " (" + where + ")";
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
