package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.Evidence;
import strikeoff.plan.Hours;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * A step with more work in it than the longest day has hours, so that it fits into none, however
 * the steps before it are moved.
 *
 * @param step its number
 * @param title the step in a few words
 * @param takes from the start of its first work to the end of its last, waits between included
 * @param day the longest opening hours of a day
 */
public record LongStep(
    int step, String title, Span takes, Span day, PlanPath path, List<Related> related)
    implements Evidence {

  public LongStep {
    related = List.copyOf(related);
  }

  static List<LongStep> all(Timeline.Day simulated, PrintPlan plan) {
    Map<Integer, Moment[]> ends = new LinkedHashMap<>();
    for (Task task : simulated.tasks()) {
      boolean onCloth =
          task.worked() && task.kind() != Task.Kind.WASH_SCREEN && task.kind() != Task.Kind.LOAD;
      if (onCloth) {
        Moment[] own =
            ends.computeIfAbsent(task.step(), s -> new Moment[] {task.start(), task.end()});
        own[1] = own[1].later(task.end());
      }
    }
    double longest = 0;
    for (Hours.Day day : plan.hours().days()) {
      longest = Math.max(longest, day.closes() - day.opens());
    }
    List<LongStep> all = new ArrayList<>();
    for (Step step : plan.run()) {
      Moment[] own = ends.get(step.number());
      if (own != null && own[1].since(own[0]).minutes() > longest) {
        all.add(
            new LongStep(
                step.number(),
                step.title(),
                own[1].since(own[0]),
                new Span(longest),
                step.path(),
                List.of(new Related("the hours", plan.hours().path()))));
      }
    }
    return all;
  }
}
