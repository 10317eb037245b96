package strikeoff.propose;

import java.util.List;
import java.util.Map;
import strikeoff.day.facts.Rehearsed;
import strikeoff.paste.Enough;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Range;

/**
 * Whether the pastes that a plan states last: a run that washes screens more often, or that has
 * more of them full at a time, needs more.
 */
final class PasteLeft {

  /** What each gram that is missing counts, in seconds. */
  private static final double A_GRAM = 60;

  private final Enough enough;

  PasteLeft(PrintPlan plan, Policy policy) {
    this.enough = new Enough(plan, policy);
  }

  /** What a run counts whose pastes run out by the best estimate, in seconds; zero if they last. */
  double missing(Rehearsed rehearsed) {
    Map<String, Range> missing = enough.missing(rehearsed.tasks(), rehearsed.impressions());
    double grams = 0;
    for (Range range : List.copyOf(missing.values())) {
      grams += Math.max(0, range.best());
    }
    return A_GRAM * grams;
  }
}
