package strikeoff.findings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.document.Scalars;
import strikeoff.plan.Acceptance;
import strikeoff.plan.PrintPlan;

/**
 * What is accepted at a step stays with that step when steps come, go or move: under its old number
 * it would let pass what nobody accepted.
 */
public final class AcceptedSteps {

  private static final Pattern STEP = Pattern.compile("run\\[(\\d{1,9})](.*)", Pattern.DOTALL);

  private AcceptedSteps() {}

  /**
   * What has to change in the plan's acceptances.
   *
   * @param numbers for the number of a step, from 1, the one that it has now; none where it is gone
   * @param stands true for a place that there is once the steps have changed
   */
  public static List<Edit> following(
      PrintPlan plan, Map<Integer, Integer> numbers, Predicate<PlanPath> stands) {
    List<Edit> edits = new ArrayList<>();
    List<Acceptance> gone = gone(plan, numbers, stands);
    for (Acceptance one : plan.acceptances()) {
      Optional<PlanPath> now = now(one, numbers, stands);
      if (gone.contains(one)) {
        edits.add(new Edit.Remove(one.path()));
      } else if (now.isPresent() && !now.get().text().equals(one.at().orElse(""))) {
        edits.add(new Edit.Write(one.path().key("at"), Scalars.text(now.get().spoken())));
      }
    }
    // A list without any item can't be written.
    return !gone.isEmpty() && gone.size() == plan.acceptances().size()
        ? List.of(new Edit.Remove(new PlanPath("accept")))
        : edits;
  }

  /** Those whose step is gone, or no longer has the place that they are about. */
  public static List<Acceptance> gone(
      PrintPlan plan, Map<Integer, Integer> numbers, Predicate<PlanPath> stands) {
    return plan.acceptances().stream()
        .filter(one -> one.at().filter(at -> STEP.matcher(at).matches()).isPresent())
        .filter(one -> now(one, numbers, stands).isEmpty())
        .toList();
  }

  private static Optional<PlanPath> now(
      Acceptance one, Map<Integer, Integer> numbers, Predicate<PlanPath> stands) {
    Matcher step = STEP.matcher(one.at().orElse(""));
    if (!step.matches()) {
      return Optional.empty();
    }
    return Optional.ofNullable(numbers.get(Integer.parseInt(step.group(1)) + 1))
        .map(number -> new PlanPath("run[" + (number - 1) + "]" + step.group(2)))
        .filter(stands);
  }

  /**
   * The number that each step of a run has after some edits.
   *
   * @param steps how many it has before
   */
  public static Map<Integer, Integer> numbers(List<Edit> edits, int steps) {
    List<Integer> order = new ArrayList<>();
    for (int number = 1; number <= steps; number++) {
      order.add(number);
    }
    for (Edit edit : edits) {
      int at = step(edit.at()) == 0 ? -1 : order.indexOf(step(edit.at()));
      if (at < 0) {
        continue;
      }
      if (edit instanceof Edit.Insert) {
        order.add(at, 0);
      } else if (edit instanceof Edit.Remove) {
        order.remove(at);
      } else if (edit instanceof Edit.Move move) {
        Integer moved = order.remove(at);
        order.add(order.indexOf(step(move.before())), moved);
      }
    }
    Map<Integer, Integer> numbers = new HashMap<>();
    for (int i = 0; i < order.size(); i++) {
      if (order.get(i) > 0) {
        numbers.put(order.get(i), i + 1);
      }
    }
    return numbers;
  }

  /** The number of the step that stands there; 0 if it is no step, or only a part of one. */
  private static int step(PlanPath path) {
    Matcher step = STEP.matcher(path.text());
    return step.matches() && step.group(2).isEmpty() ? Integer.parseInt(step.group(1)) + 1 : 0;
  }
}
