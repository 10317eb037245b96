package strikeoff.propose;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/** Finds the steps of a plan's own run again in another run of it, by what they do. */
final class SameSteps {

  private SameSteps() {}

  /**
   * For the number of a step in the plan's run the number that it has in another.
   *
   * @param run numbered from 1; a step that it has twice, or none that does the same, is left out
   */
  static Map<Integer, Integer> numbers(PrintPlan plan, List<Step> run) {
    Map<Integer, Integer> numbers = new HashMap<>();
    for (Step step : plan.run()) {
      only(run, step).ifPresent(now -> numbers.put(step.number(), now.number()));
    }
    return numbers;
  }

  private static Optional<Step> only(List<Step> run, Step step) {
    List<Step> alike = run.stream().filter(other -> doesTheSame(step, other)).toList();
    return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
  }

  private static boolean doesTheSame(Step one, Step other) {
    if (one instanceof PrintStep a && other instanceof PrintStep b) {
      return a.arrangements().equals(b.arrangements())
          && a.only().equals(b.only())
          && a.separations().equals(b.separations());
    }
    if (one instanceof Step.Mix a && other instanceof Step.Mix b) {
      return a.pastes().equals(b.pastes());
    }
    if (one instanceof Step.Sew a && other instanceof Step.Sew b) {
      return a.seam().equals(b.seam());
    }
    return Leeway.isWet(one) && one.at(1).equals(other.at(1));
  }
}
