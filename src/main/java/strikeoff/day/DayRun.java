package strikeoff.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.layout.Layout;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Until;
import strikeoff.policy.Policy;

/** A run with its contacts, before anything is grouped for rules. */
public record DayRun(
    Simulation.Run run,
    List<Task> tasks,
    List<Impression> impressions,
    List<Contact> contacts,
    Moment start,
    Moment finish,
    Use use) {

  /** Impressions by the number of their step. */
  public Map<Integer, List<Impression>> byStep() {
    Map<Integer, List<Impression>> byStep = new LinkedHashMap<>();
    for (Impression impression : impressions) {
      byStep.computeIfAbsent(impression.step(), s -> new ArrayList<>()).add(impression);
    }
    return byStep;
  }

  /** When a film is frame-safe if the frame laid on it later were waited with. */
  private static Reached safe(Simulation.Run run, Impression film, Impression later) {
    Printed earlier = run.printed().get(film.id());
    Optional<Draught> air = run.printed().get(later.id()).airAfter(earlier);
    return run.cloth()
        .ifLeft(
            Until.Dryness.FRAME_SAFE,
            earlier,
            film.film().frameSafe(),
            later.laid().seconds(),
            air);
  }

  public static DayRun of(PrintPlan plan, Layout layout, Policy policy) {
    return of(plan, Beforehand.of(plan, layout, policy, Effort.USUAL));
  }

  /**
   * @param known of a plan that differs in its run at most
   */
  public static DayRun of(PrintPlan plan, Beforehand known) {
    return of(Choices.soonest(plan, known, Optional.empty()), plan, known);
  }

  /** A run that was simulated, with its contacts. */
  public static DayRun of(Simulation.Run run, PrintPlan plan, Beforehand known) {
    List<Task> tasks = run.tasksByStart();
    ContactFinder finder = new ContactFinder(known, (one, other) -> safe(run, one, other));
    List<Impression> impressions = new ArrayList<>(run.printed().size());
    for (Printed p : run.printed()) {
      Impression impression =
          new Impression(
              p.id(),
              p.step().number(),
              p.set(),
              p.footprint(),
              p.person(),
              new Moment(p.laid()),
              new Moment(p.lifted()),
              run.cloth().film(p),
              p.step().path());
      impressions.add(impression);
    }
    // A step that prints beside another lays frames before that one has ended.
    impressions.stream().sorted(Comparator.comparing(Impression::laid)).forEach(finder::lay);
    Moment opens = Moment.opens(1, plan.hours());
    return new DayRun(
        run,
        tasks,
        impressions,
        finder.contacts(),
        tasks.isEmpty() ? opens : tasks.get(0).start(),
        tasks.stream().map(Task::end).reduce(opens, Moment::later),
        Use.of(tasks, plan.hours()));
  }
}
