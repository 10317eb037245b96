package strikeoff.report;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;

/**
 * What one person of several does in a run, and what she waits for: in steps that she works at or
 * nobody does, and not while she works at something else.
 */
final class OwnTasks {

  private final String person;

  /** Steps that others work at without her. */
  private final Set<Integer> others = new HashSet<>();

  /** When she works: ends by beginnings, in seconds. She does one thing at a time. */
  private final TreeMap<Long, Long> busy = new TreeMap<>();

  OwnTasks(String person, Timeline run) {
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

  boolean holds(Task task) {
    return task.people().isEmpty()
        ? !others.contains(task.step()) && !(task.kind() == Task.Kind.WAIT && worksIn(task))
        : task.people().contains(person);
  }

  private boolean worksIn(Task wait) {
    Map.Entry<Long, Long> last = busy.lowerEntry(wait.end().seconds());
    return last != null && last.getValue() > wait.start().seconds();
  }
}
