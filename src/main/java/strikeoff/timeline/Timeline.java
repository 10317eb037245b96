package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import strikeoff.layout.Layout;
import strikeoff.layout.Tube;
import strikeoff.plan.Draught;
import strikeoff.plan.Evidence;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Until;
import strikeoff.policy.Fibre;
import strikeoff.policy.Policy;
import strikeoff.units.Span;

/**
 * The run as simulated.
 *
 * @param tasks in order of start
 * @param impressions in order of laying; an impression's id is its index
 * @param contacts every frame on a film too early, in order of laying
 * @param start when the first task starts
 * @param finish when the last task ends
 * @param handsOn time that people work
 * @param waiting time that people wait inside opening hours
 * @param evidence further facts for rules, one for each cause
 */
public record Timeline(
    List<Task> tasks,
    List<Impression> impressions,
    List<Contact> contacts,
    Moment start,
    Moment finish,
    Span handsOn,
    Span waiting,
    List<Evidence> evidence) {

  public Timeline {
    tasks = List.copyOf(tasks);
    impressions = List.copyOf(impressions);
    contacts = List.copyOf(contacts);
    evidence = List.copyOf(evidence);
  }

  /**
   * Simulates the run of a plan as written: to the second, from the opening of day 1, in one pass.
   */
  public static Timeline of(PrintPlan plan, Layout layout, Policy policy) {
    return of(plan, layout, policy, Effort.USUAL);
  }

  /** The same with so much work at the most. */
  public static Timeline of(PrintPlan plan, Layout layout, Policy policy, Effort effort) {
    return of(plan, Beforehand.of(plan, layout, policy, effort));
  }

  /**
   * The same for a day on which pastes die.
   *
   * @param lives how long a paste may stand between mixing and print, by the shortest estimate;
   *     empty where it may stand for as long as one likes
   */
  public static Timeline of(
      PrintPlan plan,
      Layout layout,
      Policy policy,
      Effort effort,
      Function<Paste, Optional<Span>> lives) {
    return of(plan, Beforehand.of(plan, layout, policy, effort, lives));
  }

  static Timeline of(PrintPlan plan, Beforehand known) {
    Day day = Day.of(plan, known);
    return new Timeline(
        day.tasks(),
        day.impressions(),
        day.contacts(),
        day.start(),
        day.finish(),
        day.use().handsOn(),
        day.use().waiting(),
        evidence(day, plan, known));
  }

  private static List<Evidence> evidence(Day day, PrintPlan plan, Beforehand known) {
    Policy policy = known.policy();
    List<Evidence> evidence = new ArrayList<>();
    List<CannotStart> blocked = day.run().blocked();
    evidence.addAll(blocked);
    evidence.addAll(FilmsInRoom.all(day, plan, policy));
    evidence.addAll(NotInRoom.all(day.run().missing(), plan));
    evidence.addAll(DryingAir.all(day, plan, policy));
    Trials trials = new Trials(plan, known, day);
    int impressions = day.impressions().size();
    evidence.addAll(new WetContacts(day, trials).all());
    evidence.addAll(
        TakingUp.all(day, plan.measures(), remedy -> trials.tried(remedy, impressions)));
    evidence.addAll(IdleHand.all(day, plan, trials));
    evidence.addAll(Clearing.of(day, plan, known));
    evidence.addAll(IdleScreen.all(day, plan, policy));
    // Steps that are simulated by one person instead of several are longer for that reason alone.
    int byOne =
        blocked.stream()
            .filter(b -> b.why() == CannotStart.Why.SCREEN_TWICE)
            .mapToInt(CannotStart::step)
            .min()
            .orElse(Integer.MAX_VALUE);
    List<LongStep> endless =
        LongStep.all(day, plan).stream().filter(s -> s.step() < byOne).toList();
    evidence.addAll(endless);
    // What comes after a step that fits into no day is simulated on days that will be others once
    // it is split, so those are not told.
    int told = endless.stream().mapToInt(LongStep::step).min().orElse(byOne);
    DayTooLong.Trial trial =
        (d, steps, late, days) -> trials.endsInTime(d, steps, late, days, impressions);
    boolean tender =
        plan.cloth().fibres().keySet().stream().map(policy::fibre).anyMatch(Fibre::protein);
    DayTooLong.all(day.tasks(), plan, tender, trial).stream()
        .filter(d -> d.step() < told)
        .forEach(evidence::add);
    evidence.addAll(LongestFrame.all(day, plan, policy));
    evidence.addAll(SetOnTable.all(day, plan));
    evidence.addAll(day.run().places());
    evidence.addAll(FramesOnBoards.all(day, plan));
    RunFigures figures = RunFigures.of(day, plan);
    evidence.add(figures);
    evidence.addAll(WaitingShare.of(day.use(), figures));
    return evidence;
  }

  /** Where the cloth lay, in order. */
  public List<ClothLies> clothLies() {
    return evidence.stream()
        .filter(ClothLies.class::isInstance)
        .map(ClothLies.class::cast)
        .toList();
  }

  /** How many lays each screen makes, by name, in the order of first use. */
  public Map<String, Integer> laysByScreen() {
    Map<String, Integer> lays = new LinkedHashMap<>();
    for (Impression impression : impressions) {
      lays.merge(impression.footprint().screen().name(), 1, Integer::sum);
    }
    return lays;
  }

  /** A run with its contacts, before anything is grouped for rules. */
  record Day(
      Simulation.Run run,
      List<Task> tasks,
      List<Impression> impressions,
      List<Contact> contacts,
      Moment start,
      Moment finish,
      Use use) {

    /** Impressions by the number of their step. */
    Map<Integer, List<Impression>> byStep() {
      Map<Integer, List<Impression>> byStep = new LinkedHashMap<>();
      for (Impression impression : impressions) {
        byStep.computeIfAbsent(impression.step(), s -> new ArrayList<>()).add(impression);
      }
      return byStep;
    }

    /** When a film is frame-safe if the frame laid on it later were waited with. */
    private static Reached safe(Simulation.Run run, Impression film, Impression later) {
      Printed earlier = run.printed().get(film.id());
      Optional<Draught> air = Causes.air(earlier, run.printed().get(later.id()));
      return run.cloth()
          .ifLeft(
              Until.Dryness.FRAME_SAFE,
              earlier,
              film.film().frameSafe(),
              later.laid().seconds(),
              air);
    }

    static Day of(PrintPlan plan, Layout layout, Policy policy) {
      return of(plan, Beforehand.of(plan, layout, policy, Effort.USUAL));
    }

    /**
     * @param known of a plan that differs in its run at most
     */
    static Day of(PrintPlan plan, Beforehand known) {
      return of(Choices.soonest(plan, known, Optional.empty()), plan, known);
    }

    /** A run that was simulated, with its contacts. */
    static Day of(Simulation.Run run, PrintPlan plan, Beforehand known) {
      List<Task> tasks = run.tasksByStart();
      ContactFinder finder =
          new ContactFinder(
              Tube.of(plan.cloth()),
              known.effort().contacts(),
              (one, other) -> safe(run, one, other));
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
        finder.lay(impression);
      }
      Moment opens = Moment.of(1, plan.hours().of(1).opens());
      return new Day(
          run,
          tasks,
          impressions,
          finder.contacts(),
          tasks.isEmpty() ? opens : tasks.get(0).start(),
          tasks.stream().map(Task::end).reduce(opens, Moment::later),
          Use.of(tasks, plan.hours()));
    }
  }
}
