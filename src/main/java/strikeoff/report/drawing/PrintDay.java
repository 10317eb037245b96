package strikeoff.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.PrintPlan;

/**
 * One day of the run: the hours shown and what starts in them. Time when the room is closed falls
 * between two days and takes no room.
 *
 * @param number from 1
 * @param from first moment shown, a full hour
 * @param to last moment shown, a full hour
 * @param tasks in order of start, closed hours left out
 */
public record PrintDay(int number, Moment from, Moment to, List<Task> tasks) {

  private static final long HOUR = 3600;

  public PrintDay {
    tasks = List.copyOf(tasks);
  }

  /** The days on which something is done; quiet days between them are left out. */
  public static List<PrintDay> of(PrintPlan plan, Timeline timeline) {
    TreeMap<Integer, List<Task>> byDay = new TreeMap<>();
    for (Task task : timeline.tasks()) {
      if (task.kind() != Task.Kind.CLOSED) {
        byDay.computeIfAbsent(task.start().day(), day -> new ArrayList<>()).add(task);
      }
    }
    List<PrintDay> days = new ArrayList<>();
    byDay.forEach((day, tasks) -> days.add(of(plan, day, tasks)));
    return days;
  }

  private static PrintDay of(PrintPlan plan, int day, List<Task> tasks) {
    long opens = Moment.opens(day, plan.hours()).seconds();
    long closes = Moment.closes(day, plan.hours()).seconds();
    long first = Long.MAX_VALUE;
    long last = Long.MIN_VALUE;
    for (Task task : tasks) {
      first = Math.min(first, task.start().seconds());
      if (task.worked() || task.end().seconds() <= closes) {
        last = Math.max(last, task.end().seconds());
      }
    }
    long from = Math.floorDiv(Math.min(first, Math.max(opens, first - HOUR)), HOUR) * HOUR;
    long midnight = Moment.of(day + 1, 0).seconds();
    long latest = Math.min(Math.max(last, first + HOUR), midnight);
    long to = Math.min(midnight, -Math.floorDiv(-latest, HOUR) * HOUR);
    return new PrintDay(day, new Moment(from), new Moment(to), tasks);
  }
}
