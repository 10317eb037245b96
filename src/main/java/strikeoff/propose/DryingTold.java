package strikeoff.propose;

import java.util.List;
import strikeoff.day.Doing;
import strikeoff.day.Task;
import strikeoff.units.Span;

/**
 * Says in a run's comments how long its felt waits are, as the run is simulated: who stands at the
 * table needs minutes, and the state as well.
 *
 * @param ordinary tasks of the run on an ordinary day
 * @param slow the same where everything dries slowly
 */
record DryingTold(List<Task> ordinary, List<Task> slow) {

  /** Says nothing of any wait. */
  static final DryingTold NOTHING = new DryingTold(List.of(), List.of());

  /**
   * How long a step's waits of one kind last, by the longest of them.
   *
   * @return with a colon and a space at its end; nothing where nobody ever waits so
   */
  String of(int step, Doing waited) {
    List<Span> usual = waits(ordinary, step, waited);
    List<Span> slowly = waits(slow, step, waited);
    if (usual.isEmpty() && slowly.isEmpty()) {
      return "";
    }
    if (usual.isEmpty()) {
      return "at once on an ordinary day, on a slow day " + longest(slowly) + ": ";
    }
    String most = longest(usual);
    String atMost = slowly.isEmpty() ? most : longest(slowly);
    return most
        + (most.equals(atMost) ? "" : ", on a slow day " + atMost.replaceFirst("^about ", ""))
        + ": ";
  }

  private static List<Span> waits(List<Task> tasks, int step, Doing waited) {
    return tasks.stream()
        .filter(task -> task.step() == step && task.doing().key().equals(waited.key()))
        .map(task -> task.end().since(task.start()))
        .filter(span -> span.minutes() > 0)
        .toList();
  }

  private static String longest(List<Span> waits) {
    Span most = waits.stream().reduce(waits.get(0), (a, b) -> a.compareTo(b) >= 0 ? a : b);
    if (most.minutes() < 1) {
      return "less than a minute";
    }
    boolean alike = waits.stream().allMatch(wait -> wait.toTheMinute().equals(most.toTheMinute()));
    return (alike ? "about " : "up to ") + most.toTheMinute();
  }
}
