package strikeoff.bath;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.paste.PasteAge;
import strikeoff.paste.Recipe;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Fibre;
import strikeoff.policy.Policy;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/**
 * The run as fixing sees it: what is on the cloth at each step. A rinse or a wash ends a phase;
 * what is printed in one phase is fixed in that phase.
 */
final class FixingRun {

  private final PrintPlan plan;
  private final Timeline timeline;
  private final List<PasteAge> ages;
  private final Policy policy;

  /** By the number of the step; steps are numbered from 1 in the order of the run. */
  private final int[] phases;

  /** By the number of the step: every fact about fixing asks. */
  private final Map<Integer, Alkali> alkali = new HashMap<>();

  private final Map<Integer, List<Impression>> dyes = new HashMap<>();

  FixingRun(PrintPlan plan, Timeline timeline, List<PasteAge> ages, Policy policy) {
    this.plan = plan;
    this.timeline = timeline;
    this.ages = List.copyOf(ages);
    this.policy = policy;
    this.phases = new int[plan.run().size() + 2];
    for (Step step : plan.run()) {
      boolean ends = step instanceof Step.Rinse || step instanceof Step.Wash;
      phases[step.number() + 1] = phases[step.number()] + (ends ? 1 : 0);
    }
  }

  PrintPlan plan() {
    return plan;
  }

  /** The units that the plan is answered in. */
  Measures units() {
    return plan.measures();
  }

  Timeline timeline() {
    return timeline;
  }

  List<PasteAge> ages() {
    return ages;
  }

  Policy policy() {
    return policy;
  }

  /** Number of rinses and washes before the step. */
  int phase(int step) {
    return phases[step];
  }

  /** Impressions of a medium that lie on the cloth, of the step's phase, when the step starts. */
  List<Impression> before(Step step, Medium medium) {
    return medium == Medium.DYE
        ? dyes.computeIfAbsent(step.number(), number -> lying(step, Medium.DYE))
        : lying(step, medium);
  }

  private List<Impression> lying(Step step, Medium medium) {
    int phase = phase(step.number());
    Set<Integer> steps = new HashSet<>();
    for (Step earlier : plan.run()) {
      if (earlier.number() < step.number() && phase(earlier.number()) == phase) {
        steps.add(earlier.number());
      }
    }
    return impressions(medium, i -> steps.contains(i.step()));
  }

  List<Impression> impressions(Medium medium, Predicate<Impression> which) {
    return timeline.impressions().stream()
        .filter(i -> i.footprint().paste().medium() == medium)
        .filter(which)
        .toList();
  }

  /** Pastes of some impressions, each once, in order of first printing. */
  static List<Paste> pastes(List<Impression> impressions) {
    Map<String, Paste> byName = new LinkedHashMap<>();
    impressions.forEach(
        i -> byName.putIfAbsent(i.footprint().paste().name(), i.footprint().paste()));
    return List.copyOf(byName.values());
  }

  static List<String> names(List<Paste> pastes) {
    return pastes.stream().map(Paste::name).toList();
  }

  /** Names of the placements, each once. */
  static List<String> placements(List<Impression> impressions) {
    Set<String> names = new LinkedHashSet<>();
    impressions.forEach(i -> names.add(i.footprint().placement().name()));
    return List.copyOf(names);
  }

  List<ReactiveGroup> groups(List<Paste> pastes) {
    return pastes.stream().flatMap(p -> p.groups().stream()).distinct().map(policy::group).toList();
  }

  /** Fibres of the cloth that take dye and that strong alkali harms. */
  List<String> proteinFibres() {
    return plan.cloth().fibres().keySet().stream()
        .filter(name -> policy.fibre(name).protein())
        .toList();
  }

  /** How long the fibre of the cloth that stands least may lie in soda; empty if all stand it. */
  Optional<Span> standsSoda() {
    return proteinFibres().stream().map(policy::fibre).map(this::standsSoda).min(Span::compareTo);
  }

  Span standsSoda(Fibre fibre) {
    return fibre.standsSoda().orElseGet(() -> policy.cloth().silkInSoda());
  }

  /** True for cloth of fibres that take dye and that strong alkali harms, and no cellulose. */
  boolean proteinAlone() {
    return !proteinFibres().isEmpty() && !policy.anyCellulose(plan.cloth().fibres().keySet());
  }

  /** A soak before a batch or before steam only brings the alkali; the dye has its time there. */
  boolean isTheLast(Step.Fix fix) {
    return !followedBy(fix, s -> s instanceof Step.Fix);
  }

  /**
   * The alkali that works in a fix step: that of its own bath, or of the last alkaline soak before
   * it in the phase, or else of the pastes. A bath without any washes out what the pastes hold.
   */
  Alkali alkali(Step.Fix fix) {
    Alkali known = alkali.get(fix.number());
    if (known == null) {
      known = working(fix);
      alkali.put(fix.number(), known);
    }
    return known;
  }

  private Alkali working(Step.Fix fix) {
    Alkali found = Alkali.NONE;
    boolean washedOut = false;
    for (Step step : plan.run()) {
      boolean before = step.number() <= fix.number() && phase(step.number()) == phase(fix.number());
      if (before && step instanceof Step.Fix soak && soak.wets()) {
        Liquor liquor = Liquor.of(soak.bath(), policy);
        found =
            Alkali.of(
                liquor, soak.temperature().celsius(), Soaks.dry(plan.cloth()).kilograms(), policy);
        washedOut = !liquor.hasAlkali() && !before(soak, Medium.DYE).isEmpty();
      }
    }
    boolean inPaste =
        pastes(before(fix, Medium.DYE)).stream().anyMatch(p -> new Recipe(p, policy).holdsAlkali());
    return found.there() || washedOut || !inPaste ? found : Alkali.IN_PASTE;
  }

  /**
   * Soda ash that brings even the lowest estimate of a soak up to what dyers give a print; where it
   * only brings the alkali to a batch or to steam, to the usual strength, which their times hold
   * for.
   */
  Mass sodaToAdd(Step.Fix soak) {
    Liquor liquor = Liquor.of(soak.bath(), policy);
    double wanted =
        isTheLast(soak)
            ? policy.fixing().weakestBath().amount()
            : policy.fixing().usualBath().gramsPerLitre();
    double lacks = wanted * liquor.litres().high() - liquor.sodaGrams().low();
    return new Mass(Soaks.up(Math.max(0, lacks), policy.paste().weighFine().grams()));
  }

  /** When the first task of a step starts; empty if the simulation has none for it. */
  Optional<Moment> start(Step step) {
    return timeline.tasks().stream()
        .filter(t -> t.step() == step.number() && t.kind() != Task.Kind.CLOSED)
        .filter(t -> t.kind() != Task.Kind.WAIT)
        .map(Task::start)
        .min(Moment::compareTo);
  }

  /** Steps of a type in the step's phase that come after it. */
  boolean followedBy(Step step, Predicate<Step> what) {
    return plan.run().stream()
        .anyMatch(
            s ->
                s.number() > step.number()
                    && phase(s.number()) == phase(step.number())
                    && what.test(s));
  }

  /** True if a soak, a rinse or a wash follows a step. */
  boolean getsWetAfter(int step) {
    return plan.run().stream().anyMatch(s -> s.number() > step && wets(s));
  }

  /** True for a soak, a rinse or a wash. */
  static boolean wets(Step step) {
    return step instanceof Step.Rinse
        || step instanceof Step.Wash
        || step instanceof Step.Fix fix && fix.wets();
  }

  /** The wait right before a step, in which prints dry. */
  Optional<Step.Dry> dryingBefore(Step step) {
    return step.number() > 1 && plan.run().get(step.number() - 2) instanceof Step.Dry wait
        ? Optional.of(wait)
        : Optional.empty();
  }

  /** Number of the last alkaline soak of the phase up to a step; 0 if there is none. */
  int alkalineSoak(Step.Fix fix) {
    return plan.run().stream()
        .filter(s -> s.number() <= fix.number() && phase(s.number()) == phase(fix.number()))
        .filter(
            s ->
                s instanceof Step.Fix soak
                    && soak.wets()
                    && Liquor.of(soak.bath(), policy).hasAlkali())
        .mapToInt(Step::number)
        .max()
        .orElse(0);
  }

  /** The first rinse or wash after a step. */
  Optional<Step> waterAfter(int step) {
    return plan.run().stream()
        .filter(s -> s.number() > step && (s instanceof Step.Rinse || s instanceof Step.Wash))
        .findFirst();
  }

  /** True if a bath wets the print before the step. */
  boolean isSoakedOnPrintBefore(Step step) {
    return plan.run().stream()
        .anyMatch(
            s ->
                s instanceof Step.Fix soak
                    && soak.wets()
                    && soak.number() < step.number()
                    && phase(soak.number()) == phase(step.number())
                    && !before(soak, Medium.DYE).isEmpty());
  }

  /** True if an alkaline soak before the step left its alkali in the cloth. */
  boolean soakedBefore(Step step) {
    return plan.run().stream()
        .anyMatch(
            s ->
                s.number() < step.number()
                    && phase(s.number()) == phase(step.number())
                    && s instanceof Step.Fix fix
                    && fix.wets()
                    && Liquor.of(fix.bath(), policy).hasAlkali());
  }
}
