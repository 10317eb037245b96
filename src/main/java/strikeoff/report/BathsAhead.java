package strikeoff.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.check.Checked;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.report.page.DaySheet.Course;
import strikeoff.report.page.DaySheet.Job;
import strikeoff.report.page.DaySheet.Prints;
import strikeoff.report.page.DaySheet.Where;
import strikeoff.speech.SheetSpeech;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/**
 * Tells of a bath before it is needed. A run has no minutes for weighing, dissolving and warming
 * it, and a plan no step: it is to be ready when the cloth goes in. That is told once nothing else
 * is done to the cloth before, at the latest before the last thing that is done at all, or at the
 * end of the last day before where a day begins with it. Then it is weighed and dissolved that day
 * and warmed in the morning.
 */
final class BathsAhead {

  private static final Set<Task.Kind> NO_WORK =
      EnumSet.of(Task.Kind.CLOSED, Task.Kind.QUEUE, Task.Kind.DRY_SCREEN);

  private final PrintPlan plan;
  private final Timeline run;
  private final int day;
  private final List<WorkBlock> blocks;

  private BathsAhead(Checked.Judged judged, int day, List<WorkBlock> blocks) {
    this.plan = judged.plan();
    this.run = judged.facts().timeline();
    this.day = day;
    this.blocks = blocks;
  }

  /**
   * @param jobs of a day's blocks, which may be one person's
   * @return the same with what is to be ready
   */
  static List<Job> in(List<Job> jobs, Checked.Judged judged, int day, List<WorkBlock> blocks) {
    BathsAhead baths = new BathsAhead(judged, day, blocks);
    List<Job> all = new ArrayList<>(jobs);
    for (Step step : judged.plan().run()) {
      if (step instanceof Step.Fix fix && !fix.bath().isEmpty()) {
        baths.begins(fix).ifPresent(task -> baths.tell(fix, task, all));
      }
    }
    return all;
  }

  private void tell(Step.Fix fix, Task task, List<Job> jobs) {
    Measures units = plan.measures();
    if (!beginsItsDay(task)) {
      dayOf(jobs, task)
          .ifPresent(
              at ->
                  jobs.add(
                      at,
                      ahead(fix, SheetSpeech.ready(task.start()), SheetSpeech.bath(fix, units))));
    } else if (task.start().day() == day) {
      Span left = task.start().since(Moment.opens(day, plan.hours()));
      begun(jobs, task)
          .ifPresent(
              at ->
                  jobs.add(
                      at,
                      ahead(
                          fix,
                          SheetSpeech.warm(fix, task.start(), units),
                          SheetSpeech.left(left))));
    } else if (isLastDayBefore(task) && blocks.stream().anyMatch(block -> isOf(task, block))) {
      jobs.add(ahead(fix, SheetSpeech.dissolve(task.start()), SheetSpeech.dissolved(fix, units)));
    }
  }

  private static Job ahead(Step.Fix fix, String what, String how) {
    return new Job(
        Integer.toString(fix.number()),
        what,
        Where.NOWHERE,
        List.of(),
        how,
        Prints.NOTHING,
        Course.AHEAD,
        List.of());
  }

  private Optional<Task> begins(Step.Fix fix) {
    return run.tasks().stream()
        .filter(task -> task.step() == fix.number() && task.onCloth())
        .findFirst();
  }

  /** Where to tell of it among the jobs of its day; empty where it is told on another sheet. */
  private Optional<Integer> dayOf(List<Job> jobs, Task fix) {
    return fix.start().day() != day
        ? Optional.empty()
        : begun(jobs, fix)
            .map(i -> i == 0 ? 0 : Math.min(i - 1, firstFrom(lastOnCloth(fix), jobs)));
  }

  /** The first job of its step. */
  private static Optional<Integer> begun(List<Job> jobs, Task fix) {
    return jobs.stream()
        .filter(job -> !job.isAhead() && job.step() == fix.step())
        .findFirst()
        .map(jobs::indexOf);
  }

  /** The first of some that begins no sooner; behind all of them if none does. */
  private static int firstFrom(Moment moment, List<Job> jobs) {
    int first = 0;
    while (first < jobs.size()
        && jobs.get(first).lines().stream().noneMatch(l -> l.begins().compareTo(moment) >= 0)) {
      first++;
    }
    return first;
  }

  /** When the cloth is left alone before it goes in. */
  private Moment lastOnCloth(Task fix) {
    return run.tasks().stream()
        .filter(task -> task.onCloth() && task.end().compareTo(fix.start()) <= 0)
        .filter(task -> task.step() != fix.step())
        .map(Task::end)
        .max(Moment::compareTo)
        .orElse(run.start());
  }

  /** Whether who does it did nothing that day before, and worked on one before. */
  private boolean beginsItsDay(Task fix) {
    Moment start = fix.start();
    return lastDayBefore(fix).isPresent()
        && run.tasks().stream()
            .filter(task -> task.start().day() == start.day() && !NO_WORK.contains(task.kind()))
            .noneMatch(task -> task.start().compareTo(start) < 0 && shares(fix, task));
  }

  private boolean isLastDayBefore(Task fix) {
    return lastDayBefore(fix).filter(last -> last == day).isPresent();
  }

  private Optional<Integer> lastDayBefore(Task fix) {
    return run.tasks().stream()
        .filter(task -> task.worked() && shares(fix, task))
        .map(task -> task.start().day())
        .filter(worked -> worked < fix.start().day())
        .max(Integer::compare);
  }

  private static boolean isOf(Task fix, WorkBlock block) {
    return block.tasks().stream().anyMatch(task -> task.worked() && shares(fix, task));
  }

  /** Whether who does the one has the other to do; work that is nobody's own is everybody's. */
  private static boolean shares(Task fix, Task task) {
    return fix.people().isEmpty()
        || task.people().isEmpty()
        || task.people().stream().anyMatch(fix.people()::contains);
  }
}
