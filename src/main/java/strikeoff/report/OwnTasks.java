package strikeoff.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import strikeoff.day.Doing;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;

/**
 * What one person of several does in a run, and what she waits for: in steps that she works at or
 * nobody does, and not while she works at something else. What dries while all of them do is on the
 * mind of whoever was at the cloth last: she sets the fan up and feels the films.
 */
final class OwnTasks {

  private final String person;

  /** Steps that others work at without her. */
  private final Set<Integer> others = new HashSet<>();

  /** When she works: ends by beginnings, in seconds. She does one thing at a time. */
  private final TreeMap<Long, Long> busy = new TreeMap<>();

  /** What dries meanwhile. */
  private final Set<Task> minded = new HashSet<>();

  private OwnTasks(String person, Timeline run) {
    this.person = person;
    Set<Integer> hers = new HashSet<>();
    for (Task task : run.tasks()) {
      if (task.people().contains(person)) {
        hers.add(task.step());
        busy.merge(task.start().seconds(), task.end().seconds(), Math::max);
      } else if (!task.people().isEmpty()) {
        others.add(task.step());
      }
    }
    others.removeAll(hers);
  }

  /**
   * @param people who share the work of a day, by name
   * @return in their order
   */
  static List<OwnTasks> of(int day, List<String> people, Timeline run) {
    List<OwnTasks> all = new ArrayList<>();
    people.forEach(person -> all.add(new OwnTasks(person, run)));
    for (Task task : run.tasks()) {
      if (task.start().day() == day
          && isDrying(task)
          && all.stream().noneMatch(one -> one.holds(task))) {
        all.stream()
            .max(Comparator.comparingLong(one -> one.lastAtCloth(task, run)))
            .ifPresent(one -> one.minded.add(task));
      }
    }
    return all;
  }

  private static boolean isDrying(Task task) {
    return task.kind() == Task.Kind.WAIT
        && task.people().isEmpty()
        && (task.doing() instanceof Doing.OfStep
            || task.doing() instanceof Doing.Wait && task.doing() != Doing.Wait.PAUSE);
  }

  /** When she was at the cloth last before a wait; long ago if she never was. */
  private long lastAtCloth(Task wait, Timeline run) {
    return run.tasks().stream()
        .filter(task -> task.onCloth() && task.people().contains(person))
        .mapToLong(task -> task.end().seconds())
        .filter(end -> end <= wait.start().seconds())
        .max()
        .orElse(Long.MIN_VALUE);
  }

  String person() {
    return person;
  }

  boolean holds(Task task) {
    return task.people().isEmpty()
        ? minded.contains(task)
            || !others.contains(task.step()) && !(task.kind() == Task.Kind.WAIT && worksIn(task))
        : task.people().contains(person);
  }

  private boolean worksIn(Task wait) {
    Map.Entry<Long, Long> last = busy.lowerEntry(wait.end().seconds());
    return last != null && last.getValue() > wait.start().seconds();
  }
}
