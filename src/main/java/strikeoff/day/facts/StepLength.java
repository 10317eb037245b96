package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.AboutStep;
import strikeoff.day.DayRun;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * How long a step works, against the longest day: one with more work in it fits into none, however
 * the steps before it are moved.
 *
 * @param step its number
 * @param doing the step itself
 * @param takes from the start of its first work to the end of its last, waits between included
 * @param day the longest opening hours of a day
 * @param over by how much it is longer than that; negative if it fits
 * @param rests the longest time in it in which nobody works on it; zero if somebody always does
 * @param overThen by how much the longer part is longer than that day if a night falls into that
 *     time; negative if both fit
 * @param prints true if it can be parted, since it prints
 */
public record StepLength(
    int step,
    Step doing,
    Span takes,
    Span day,
    Span over,
    Span rests,
    Span overThen,
    boolean prints,
    PlanPath path,
    List<Related> related)
    implements AboutStep {

  public StepLength {
    related = List.copyOf(related);
  }

  /**
   * @param before number of the step before which steps are told
   */
  static List<StepLength> all(DayRun simulated, PrintPlan plan, int before) {
    Map<Integer, List<Task>> byStep = new LinkedHashMap<>();
    for (Task task : simulated.tasks()) {
      boolean onCloth =
          task.worked() && task.kind() != Task.Kind.WASH_SCREEN && task.kind() != Task.Kind.LOAD;
      if (onCloth) {
        byStep.computeIfAbsent(task.step(), s -> new ArrayList<>()).add(task);
      }
    }
    double longest = plan.hours().longest().minutes();
    List<StepLength> all = new ArrayList<>();
    for (Step step : plan.run()) {
      List<Task> own = byStep.get(step.number());
      if (own != null && step.number() < before) {
        all.add(of(step, own, longest, plan));
      }
    }
    return all;
  }

  private static double takes(List<Task> tasks) {
    return end(tasks).since(tasks.get(0).start()).minutes();
  }

  private static Moment end(List<Task> tasks) {
    return tasks.stream().map(Task::end).reduce(Moment::later).orElseThrow();
  }

  private static StepLength of(Step step, List<Task> tasks, double longest, PrintPlan plan) {
    Moment begins = tasks.get(0).start();
    Moment end = end(tasks);
    Moment from = begins;
    Moment until = begins;
    Moment at = begins;
    for (Task task : tasks) {
      if (task.start().since(at).compareTo(until.since(from)) > 0) {
        from = at;
        until = task.start();
      }
      at = at.later(task.end());
    }
    double parts = Math.max(from.since(begins).minutes(), end.since(until).minutes());
    return new StepLength(
        step.number(),
        step,
        end.since(begins),
        new Span(longest),
        new Span(takes(tasks) - longest),
        until.since(from),
        new Span(parts - longest),
        step instanceof PrintStep,
        step.path(),
        List.of(new Related(Tie.HOURS, plan.hours().path())));
  }
}
