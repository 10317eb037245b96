package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.Use;
import strikeoff.document.GivenUp;
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
 * @param waiting time inside this day's opening hours in which the cloth waits and nobody works
 */
public record TableDay(
    int day, Moment starts, Moment ends, Moment closes, Span handsOn, Span waiting) {

  /**
   * @param tasks in order of start
   */
  static List<TableDay> all(List<Task> tasks, Hours hours) {
    Map<Integer, List<Task>> carried = new TreeMap<>();
    List<TableDay> days = new ArrayList<>();
    worked(tasks, hours, carried)
        .forEach((day, own) -> days.add(of(day, own, carried.getOrDefault(day, List.of()), hours)));
    return days;
  }

  /**
   * Seconds from each day's first work to its last, added up.
   *
   * @param tasks in order of start
   */
  static long atTheTable(List<Task> tasks, Hours hours) {
    return worked(tasks, hours, new TreeMap<>()).values().stream()
        .mapToLong(own -> ends(own).seconds() - own.get(0).start().seconds())
        .sum();
  }

  /**
   * What begins on each day on which somebody works.
   *
   * @param carried what is waited for on a day and was begun on an earlier one is added to it
   */
  private static Map<Integer, List<Task>> worked(
      List<Task> tasks, Hours hours, Map<Integer, List<Task>> carried) {
    Map<Integer, List<Task>> byDay = new TreeMap<>();
    for (Task task : tasks) {
      if (task.kind() != Task.Kind.CLOSED && task.kind() != Task.Kind.DRY_SCREEN) {
        int day = of(task.start(), hours);
        boolean parts = task.waits() && task.end().compareTo(opens(day + 1, hours)) > 0;
        byDay
            .computeIfAbsent(day, d -> new ArrayList<>())
            .add(parts ? task.within(task.start(), opens(day + 1, hours)) : task);
        // A wait over several days is waited on each of them.
        for (int next = day + 1; parts && task.end().compareTo(opens(next, hours)) > 0; next++) {
          GivenUp.ifAsked();
          carried
              .computeIfAbsent(next, d -> new ArrayList<>())
              .add(task.within(opens(next, hours), opens(next + 1, hours)));
        }
      }
    }
    byDay.values().removeIf(own -> own.stream().noneMatch(Task::worked));
    return byDay;
  }

  private static Moment opens(int day, Hours hours) {
    return Moment.opens(day, hours);
  }

  private static TableDay of(int day, List<Task> own, List<Task> carried, Hours hours) {
    Use use = Use.of(Stream.concat(carried.stream(), own.stream()).toList(), hours);
    return new TableDay(
        day,
        own.get(0).start(),
        ends(own),
        Moment.closes(day, hours),
        use.handsOn(),
        use.waiting());
  }

  /** When the last work of a day ends. */
  private static Moment ends(List<Task> own) {
    Moment ends = own.get(0).start();
    for (Task task : own) {
      ends = task.worked() ? ends.later(task.end()) : ends;
    }
    return ends;
  }

  /** The day that a moment belongs to; before the opening it belongs to the day before. */
  public static int of(Moment moment, Hours hours) {
    int day = moment.day();
    Moment opens = Moment.opens(day, hours);
    return moment.compareTo(opens) < 0 && day > 1 ? day - 1 : day;
  }
}
