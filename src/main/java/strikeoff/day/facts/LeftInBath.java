package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.Breaks;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Limit;
import strikeoff.units.Span;

/**
 * Cloth that stays in its soak or in steam when the time is over, since nobody begins anything in a
 * break. A batch is left to itself anyway, and a night is written into the plan.
 *
 * @param step number of the step in which it lies
 * @param fix that step
 * @param over when its time is over
 * @param until when it is taken out
 * @param longer how long that is; zero if hands are there
 * @param most how long it may be before it is told
 * @param dry a wait before the step with which the break ends before its time is over
 */
public record LeftInBath(
    int step,
    Step.Fix fix,
    Moment over,
    Moment until,
    Span longer,
    Span dry,
    Limit most,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public LeftInBath {
    related = List.copyOf(related);
  }

  /** True if that is worth a word. */
  boolean tooLong() {
    return longer.minutes() > most.amount();
  }

  /** True for steam, false for a soak. */
  public boolean steamed() {
    return fix.how() == DyeFixing.STEAM;
  }

  /**
   * One for each soak and each steaming that something is done to the cloth after.
   *
   * @param tasks in order of start
   */
  static List<LeftInBath> all(List<Task> tasks, PrintPlan plan, Limit most) {
    List<LeftInBath> all = new ArrayList<>();
    Breaks breaks = new Breaks(plan.hours());
    Task in = null;
    for (Task task : tasks) {
      if (!task.onCloth()) {
        continue;
      }
      if (in != null) {
        all.add(of(in, task, plan, breaks, most));
      }
      in = task.kind() == Task.Kind.FIX && task.worked() && stays(task, plan) ? task : null;
    }
    return all;
  }

  /** Brushed on it is no bath. */
  private static boolean stays(Task task, PrintPlan plan) {
    return plan.step(task.step())
        .filter(step -> step instanceof Step.Fix fix && fix.how() != DyeFixing.BATCH)
        .isPresent();
  }

  private static LeftInBath of(Task in, Task out, PrintPlan plan, Breaks breaks, Limit most) {
    boolean rests = breaks.within(in.end().seconds(), out.start().seconds()) > 0;
    boolean sameDay = in.end().day() == out.start().day();
    Span longer = rests && sameDay ? out.start().since(in.end()) : new Span(0);
    return new LeftInBath(
        in.step(),
        (Step.Fix) plan.step(in.step()).orElseThrow(),
        in.end(),
        out.start(),
        longer,
        new Span(Math.ceil(longer.minutes())),
        most,
        in.path(),
        List.of(new Related(Tie.HOURS, plan.hours().path())));
  }

  /** The wait as an edit of the plan. */
  public List<List<Edit>> edits() {
    return List.of(List.of(new Edit.Insert(path, "dry: " + dry.text())));
  }
}
