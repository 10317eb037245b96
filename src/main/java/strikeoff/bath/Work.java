package strikeoff.bath;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.policy.ReactiveGroup;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Task;
import strikeoff.timeline.Timeline;

/**
 * The run as fixing sees it: what is on the cloth at each step. A rinse or a wash ends a phase;
 * what is printed in one phase is fixed in that phase.
 */
record Work(PrintPlan plan, Timeline timeline, Policy policy) {

  /** Number of rinses and washes before the step. */
  int phase(int step) {
    int phase = 0;
    for (Step s : plan.run()) {
      boolean ends = s instanceof Step.Rinse || s instanceof Step.Wash;
      phase += ends && s.number() < step ? 1 : 0;
    }
    return phase;
  }

  /** Impressions of a medium that lie on the cloth, of the step's phase, when the step starts. */
  List<Impression> before(Step step, Medium medium) {
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
    return pastes.stream().flatMap(p -> p.group().stream()).distinct().map(policy::group).toList();
  }

  /** Fibres of the cloth that take dye and that strong alkali harms. */
  List<String> proteinFibres() {
    return plan.cloth().fibres().keySet().stream()
        .filter(
            name -> {
              var fibre = policy.fibre(name);
              return !fibre.cellulose() && fibre.takesDye().fraction() > 0;
            })
        .toList();
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
    return plan.run().stream()
        .filter(s -> s.number() > step)
        .anyMatch(
            s ->
                s instanceof Step.Rinse
                    || s instanceof Step.Wash
                    || s instanceof Step.Fix fix && fix.how() == Step.Fixing.SOAK);
  }

  /** True if an alkaline soak before the step left its alkali in the cloth. */
  boolean soakedBefore(Step step) {
    return plan.run().stream()
        .anyMatch(
            s ->
                s.number() < step.number()
                    && phase(s.number()) == phase(step.number())
                    && s instanceof Step.Fix fix
                    && fix.how() == Step.Fixing.SOAK
                    && Liquor.of(fix.bath(), policy).hasAlkali());
  }
}
