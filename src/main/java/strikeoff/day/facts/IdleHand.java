package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import strikeoff.day.DayRun;
import strikeoff.day.Moment;
import strikeoff.day.Simulation;
import strikeoff.day.Task;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * Somebody of the crew who does nothing in the whole run, though with her its days would be
 * shorter.
 *
 * @param person who
 * @param step number of the print step that she helps in
 * @param by who prints it then; empty if she washes its screens
 * @param finish when the run then ends
 * @param sooner whether that is sooner than without her
 * @param saves how many fewer hours people then spend at the table, from each day's first work to
 *     its last
 */
public record IdleHand(
    String person,
    int step,
    Optional<List<String>> by,
    Moment finish,
    boolean sooner,
    Span saves,
    PlanPath path)
    implements Evidence {

  /**
   * For the first of the crew who does nothing the change that saves most, tried by simulating the
   * run with it; none if nothing saves time, if it would bring a frame on to a wetter film, or if
   * the trials are used up. Where there is most work to join in is tried first: a run gets no
   * shorter by more than the work that she joins in, so one that another change saves more than is
   * not tried.
   */
  static List<IdleHand> all(DayRun day, PrintPlan plan, Trials trials) {
    Set<String> busy = new HashSet<>();
    day.tasks().forEach(task -> busy.addAll(task.people()));
    Optional<String> idle = plan.crew().names().stream().filter(p -> !busy.contains(p)).findFirst();
    if (idle.isEmpty() || !day.run().blocked().isEmpty()) {
      return List.of();
    }
    String person = idle.get();
    long atTheTable = TableDay.atTheTable(day.tasks(), plan.hours());
    long most = 0;
    int step = 0;
    List<IdleHand> found = List.of();
    for (Change change : changes(day, plan, person)) {
      if (change.joinsIn() == 0 || change.joinsIn() < most) {
        break;
      }
      PrintPlan changed = change.in(plan);
      Optional<Simulation.Run> tried = trials.with(person, changed, day.impressions().size());
      if (tried.isPresent() && tried.get().blocked().isEmpty()) {
        Simulation.Run run = tried.get();
        Moment finish = new Moment(run.ends());
        long saves = atTheTable - TableDay.atTheTable(run.tasksByStart(), plan.hours());
        boolean better = saves > most || saves == most && change.step().number() < step;
        if (better
            && finish.compareTo(day.finish()) <= 0
            && trials.whole(run, changed).contacts().size() <= day.contacts().size()) {
          most = saves;
          step = change.step().number();
          found =
              List.of(
                  new IdleHand(
                      person,
                      change.step().number(),
                      change.by(),
                      finish,
                      finish.compareTo(day.finish()) < 0,
                      new Span(saves / 60.0),
                      change.step().path()));
        }
      }
    }
    return found;
  }

  /**
   * What could be written so that somebody helps.
   *
   * @param step as it then stands
   * @param by who prints it then; empty if she washes its screens
   * @param joinsIn seconds of work that she joins in
   */
  private record Change(PrintStep step, Optional<List<String>> by, long joinsIn) {

    PrintPlan in(PrintPlan plan) {
      List<Step> run = new ArrayList<>(plan.run());
      run.replaceAll(old -> old.number() == step.number() ? step : old);
      return plan.with(run);
    }
  }

  /** Those with most work first. */
  private static List<Change> changes(DayRun day, PrintPlan plan, String person) {
    List<Change> changes = new ArrayList<>();
    for (Step step : plan.run()) {
      if (step instanceof PrintStep print) {
        Set<String> people = new LinkedHashSet<>(print.people());
        if (people.isEmpty()) {
          people.add(plan.crew().names().get(0));
        }
        people.add(person);
        changes.add(
            new Change(
                print.by(List.copyOf(people)),
                Optional.of(List.copyOf(people)),
                work(day, step, Task::worked)));
        if (print.washes().isEmpty()) {
          changes.add(
              new Change(
                  print.washedBy(person),
                  Optional.empty(),
                  work(day, step, task -> task.kind() == Task.Kind.WASH_SCREEN)));
        }
      }
    }
    changes.sort(Comparator.comparingLong(Change::joinsIn).reversed());
    return changes;
  }

  private static long work(DayRun day, Step step, Predicate<Task> which) {
    return day.tasks().stream()
        .filter(task -> task.step() == step.number())
        .filter(which)
        .mapToLong(task -> task.end().seconds() - task.start().seconds())
        .sum();
  }
}
