package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import strikeoff.day.Beforehand;
import strikeoff.day.Choices;
import strikeoff.day.ClothLies;
import strikeoff.day.Contact;
import strikeoff.day.DayRun;
import strikeoff.day.Effort;
import strikeoff.day.EndlessWait;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Simulation;
import strikeoff.day.Task;
import strikeoff.evidence.Evidence;
import strikeoff.layout.Layout;
import strikeoff.layout.Tube;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
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

  public static Timeline of(PrintPlan plan, Beforehand known) {
    DayRun day = DayRun.of(plan, known);
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

  /**
   * The same run with pastes that are mixed otherwise, which changes nothing that it holds but what
   * its impressions are printed with.
   *
   * @param pastes by name
   */
  public Timeline with(Map<String, Paste> pastes) {
    return new Timeline(
        tasks,
        impressions.stream().map(i -> i.with(pastes.get(i.footprint().paste().name()))).toList(),
        contacts,
        start,
        finish,
        handsOn,
        waiting,
        evidence);
  }

  /** All facts; what is tried on the run comes from {@link #tried}, in its order. */
  private static List<Evidence> evidence(DayRun day, PrintPlan plan, Beforehand known) {
    Policy policy = known.policy();
    List<EndlessWait> blocked = day.run().blocked();
    List<StepLength> lengths = StepLength.all(day, plan, firstByOne(blocked));
    RunFigures figures = RunFigures.of(day, plan);
    List<Evidence> evidence = new ArrayList<>(blocked);
    evidence.addAll(FilmsInRoom.all(day, plan, policy));
    evidence.addAll(NotInRoom.all(day.run().missing(), plan));
    evidence.addAll(DryingAir.all(day, plan, policy));
    evidence.addAll(tried(day, plan, known, firstUntold(lengths, blocked)));
    evidence.addAll(Clearing.of(day, plan, known));
    evidence.addAll(IdleScreen.all(day.run(), slowly(day.run(), plan, known), plan, policy));
    evidence.addAll(lengths);
    evidence.addAll(LeftInBath.all(day.tasks(), plan, policy.fixing().leftInBath()));
    evidence.addAll(LeftWet.all(day.tasks(), plan, policy.fixing().leftUnwashed()));
    evidence.addAll(LongestFrame.all(day, plan, policy));
    evidence.addAll(SetOnTable.all(day, plan));
    evidence.addAll(day.run().places());
    evidence.addAll(FramesOnBoards.all(day, plan));
    evidence.add(figures);
    evidence.addAll(WaitingShare.of(day.use(), figures));
    evidence.addAll(DatesHeld.of(day.finish(), plan));
    return evidence;
  }

  /** The run where films dry slowly: another one if somebody waits until a film is felt dry. */
  private static Simulation.Run slowly(Simulation.Run run, PrintPlan plan, Beforehand known) {
    boolean felt = plan.run().stream().anyMatch(Step::feels);
    return felt
        ? Choices.soonest(plan, known.with(known.films().dryingSlowly()), Optional.empty())
        : run;
  }

  /**
   * What tries remedies on the run. All of it draws on one budget, so what comes first is tried
   * first where a long run leaves too little for everything: wet film before hands and hours.
   *
   * @param told number of the step before which days are told
   */
  private static List<Evidence> tried(DayRun day, PrintPlan plan, Beforehand known, int told) {
    Trials trials = new Trials(plan, known, day);
    int impressions = day.impressions().size();
    List<Evidence> facts =
        new ArrayList<>(new WetContacts(day, trials, Tube.of(plan.cloth())).all());
    facts.addAll(TakingUp.all(day, remedy -> trials.takenUp(remedy, impressions)));
    facts.addAll(IdleHand.all(day, plan, trials));
    boolean tender =
        plan.cloth().fibres().keySet().stream().map(known.policy()::fibre).anyMatch(Fibre::protein);
    DayEnds.all(
            day.tasks(),
            plan,
            tender,
            (d, steps, late, days) -> trials.endsInTime(d, steps, late, days, impressions))
        .stream()
        .filter(end -> end.step() < told)
        .forEach(facts::add);
    return facts;
  }

  /**
   * Steps that are simulated by one person instead of several are longer for that reason alone;
   * this is the number of the first of them.
   */
  private static int firstByOne(List<EndlessWait> blocked) {
    return blocked.stream()
        .filter(wait -> wait.why() == EndlessWait.Why.SCREEN_TWICE)
        .mapToInt(EndlessWait::step)
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  /**
   * What comes after a step that fits into no day is simulated on days that will be others once it
   * is split, so those are not told.
   */
  private static int firstUntold(List<StepLength> lengths, List<EndlessWait> blocked) {
    return lengths.stream()
        .filter(step -> step.over().minutes() > 0)
        .mapToInt(StepLength::step)
        .min()
        .orElse(firstByOne(blocked));
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
}
