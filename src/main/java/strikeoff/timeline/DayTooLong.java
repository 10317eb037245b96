package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Span;

/**
 * A day on which people work after the room closes, or before it opens.
 *
 * @param day from 1; work before the opening belongs to the day before
 * @param opens when it opened
 * @param closes when the room closes
 * @param ends when the last work ends
 * @param over by how much
 * @param step the step during which closing time passes
 * @param title that step in a few words
 */
public record DayTooLong(
    int day,
    Moment opens,
    Moment closes,
    Moment ends,
    Span over,
    int step,
    String title,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public DayTooLong {
    related = List.copyOf(related);
  }

  static List<DayTooLong> all(Timeline.Day day, PrintPlan plan) {
    Map<Integer, Task> firstLate = new LinkedHashMap<>();
    Map<Integer, Moment> last = new LinkedHashMap<>();
    for (Task task : day.tasks()) {
      if (!task.worked()) {
        continue;
      }
      int session = Session.of(task.start(), plan.hours());
      if (task.end().compareTo(closes(session, plan)) > 0) {
        firstLate.putIfAbsent(session, task);
        last.merge(session, task.end(), Moment::later);
      }
    }
    List<DayTooLong> all = new ArrayList<>();
    firstLate.forEach(
        (session, task) -> {
          Moment closes = closes(session, plan);
          Moment ends = last.get(session);
          String title =
              plan.run().stream()
                  .filter(s -> s.number() == task.step())
                  .findFirst()
                  .map(s -> s.title())
                  .orElse(task.what());
          all.add(
              new DayTooLong(
                  session,
                  Moment.of(session, plan.hours().of(session).opens()),
                  closes,
                  ends,
                  ends.since(closes),
                  task.step(),
                  title,
                  task.path(),
                  List.of(new Related("the hours", plan.hours().path()))));
        });
    return all;
  }

  private static Moment closes(int day, PrintPlan plan) {
    return Moment.of(day, plan.hours().of(day).closes());
  }
}
