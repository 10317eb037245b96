package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.plan.Hours;

/** How long work goes on each day where films dry slowly. */
record SlowDays(Hours hours) {

  /** Days but the last that go on for longer, in one sentence, or none. */
  List<String> longer(List<Task> ordinary, List<Task> slow) {
    Map<Integer, Moment> usual = ends(ordinary);
    TreeMap<Integer, Moment> slowly = ends(slow);
    List<String> days = new ArrayList<>();
    slowly.forEach(
        (day, end) -> {
          boolean longer =
              usual.containsKey(day)
                  && end.upToMinute().isMinutesAfter(usual.get(day).upToMinute());
          if (longer && day < slowly.lastKey()) {
            days.add(
                "on day "
                    + day
                    + " until "
                    + end.upToMinute().clock()
                    + ", on an ordinary day until "
                    + usual.get(day).upToMinute().clock()
                    + " (the room closes at "
                    + closes(day).clock()
                    + ")");
          }
        });
    return days.isEmpty()
        ? List.of()
        : List.of("Where films dry slowly somebody works " + String.join("; ", days) + ".");
  }

  /** The first day that goes on past closing, as {@code day 1 goes on until ...}. */
  Optional<String> pastClosing(List<Task> slow) {
    return ends(slow).entrySet().stream()
        .filter(day -> day.getValue().isMinutesAfter(closes(day.getKey())))
        .findFirst()
        .map(
            day ->
                "day "
                    + day.getKey()
                    + " goes on until "
                    + day.getValue().upToMinute().clock()
                    + ", past closing at "
                    + closes(day.getKey()).clock());
  }

  private Moment closes(int day) {
    return Moment.closes(day, hours);
  }

  private static TreeMap<Integer, Moment> ends(List<Task> tasks) {
    TreeMap<Integer, Moment> ends = new TreeMap<>();
    for (Task task : tasks) {
      if (task.worked() && task.kind() != Task.Kind.CLOSED) {
        ends.merge(task.start().day(), task.end(), Moment::later);
      }
    }
    return ends;
  }
}
