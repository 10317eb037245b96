package strikeoff.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strikeoff.plan.Hours;
import strikeoff.units.Span;

/**
 * One day at the table.
 *
 * @param day from 1
 * @param starts when its first work starts
 * @param ends when the last person stops, which may be after closing time
 * @param closes when the room closes
 * @param handsOn time that people work, added up over people
 * @param waiting time inside opening hours in which the cloth waits and nobody works
 */
public record Session(
    int day, Moment starts, Moment ends, Moment closes, Span handsOn, Span waiting) {

  /**
   * @param tasks in order of start
   */
  static List<Session> all(List<Task> tasks, Hours hours) {
    Map<Integer, List<Task>> byDay = new TreeMap<>();
    for (Task task : tasks) {
      if (task.kind() != Task.Kind.CLOSED && task.kind() != Task.Kind.DRY_SCREEN) {
        byDay.computeIfAbsent(of(task.start(), hours), day -> new ArrayList<>()).add(task);
      }
    }
    List<Session> sessions = new ArrayList<>();
    byDay.forEach(
        (day, own) -> {
          if (own.stream().anyMatch(Task::worked)) {
            sessions.add(of(day, own, hours));
          }
        });
    return sessions;
  }

  private static Session of(int day, List<Task> own, Hours hours) {
    Use use = Use.of(own, hours);
    Moment ends = own.get(0).start();
    for (Task task : own) {
      ends = task.worked() ? ends.later(task.end()) : ends;
    }
    return new Session(
        day,
        own.get(0).start(),
        ends,
        Moment.of(day, hours.of(day).closes()),
        use.handsOn(),
        use.waiting());
  }

  /** The day that a moment belongs to; before the opening it belongs to the day before. */
  static int of(Moment moment, Hours hours) {
    int day = moment.day();
    Moment opens = Moment.of(day, hours.of(day).opens());
    return moment.compareTo(opens) < 0 && day > 1 ? day - 1 : day;
  }
}
