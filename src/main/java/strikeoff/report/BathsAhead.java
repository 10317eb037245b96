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
import strikeoff.plan.Step;
import strikeoff.report.page.DaySheet.Course;
import strikeoff.report.page.DaySheet.Job;
import strikeoff.report.page.DaySheet.Prints;
import strikeoff.report.page.DaySheet.Where;
import strikeoff.speech.SheetSpeech;

/**
 * Tells of a bath before it is needed. A run has no minutes for weighing, dissolving and warming
 * it, and a plan no step: it is to be ready when the cloth goes in. That is told once nothing else
 * is done to the cloth before, at the latest before the last thing that is done at all, or at the
 * end of the last day before where a day begins with it.
 */
final class BathsAhead {

  private static final Set<Task.Kind> NO_WORK =
      EnumSet.of(Task.Kind.CLOSED, Task.Kind.QUEUE, Task.Kind.DRY_SCREEN);

  private final Timeline run;
  private final int day;
  private final List<WorkBlock> blocks;

  private BathsAhead(Timeline run, int day, List<WorkBlock> blocks) {
    this.run = run;
    this.day = day;
    this.blocks = blocks;
  }

  /**
   * @param jobs of a day's blocks, which may be one person's
   * @return the same with what is to be ready
   */
  static List<Job> in(List<Job> jobs, Checked.Judged judged, int day, List<WorkBlock> blocks) {
    BathsAhead baths = new BathsAhead(judged.facts().timeline(), day, blocks);
    List<Job> all = new ArrayList<>(jobs);
    for (Step step : judged.plan().run()) {
      if (step instanceof Step.Fix fix && !fix.bath().isEmpty()) {
        baths
            .begins(fix)
            .ifPresent(
                task ->
                    baths
                        .place(all, task)
                        .ifPresent(
                            at ->
                                all.add(
                                    at,
                                    new Job(
                                        Integer.toString(fix.number()),
                                        SheetSpeech.ready(task.start(), day),
                                        Where.NOWHERE,
                                        List.of(),
                                        SheetSpeech.bath(fix, judged.plan().measures()),
                                        Prints.NOTHING,
                                        Course.AHEAD,
                                        List.of()))));
      }
    }
    return all;
  }

  private Optional<Task> begins(Step.Fix fix) {
    return run.tasks().stream()
        .filter(task -> task.step() == fix.number() && task.onCloth())
        .findFirst();
  }

  /** Where to tell of it among the day's jobs; empty where it is told on another day or sheet. */
  private Optional<Integer> place(List<Job> jobs, Task fix) {
    if (fix.start().day() != day) {
      return isEveBefore(fix) && blocks.stream().anyMatch(block -> isOf(fix, block))
          ? Optional.of(jobs.size())
          : Optional.empty();
    }
    for (int i = 0; i < jobs.size(); i++) {
      if (!jobs.get(i).isAhead() && jobs.get(i).step() == fix.step()) {
        return i > 0
            ? Optional.of(firstFrom(lastOnCloth(fix), jobs.subList(0, i - 1)))
            : lastDayBefore(fix).isEmpty() ? Optional.of(0) : Optional.empty();
      }
    }
    return Optional.empty();
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

  /** Whether its day begins with it, and this is the last one before on which somebody works. */
  private boolean isEveBefore(Task fix) {
    Moment start = fix.start();
    return lastDayBefore(fix).filter(last -> last == day).isPresent()
        && run.tasks().stream()
            .filter(task -> task.start().day() == start.day() && !NO_WORK.contains(task.kind()))
            .noneMatch(task -> task.start().compareTo(start) < 0 && shares(fix, task));
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
