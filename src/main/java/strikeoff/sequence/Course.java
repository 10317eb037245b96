package strikeoff.sequence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;

/** The run as it is worked: steps by number, and what was printed in each. */
final class Course {

  private final List<Step> steps;
  private final List<Impression> impressions;
  private final Map<Integer, Moment> ends = new LinkedHashMap<>();
  private final Map<Integer, List<Impression>> byStep;

  Course(PrintPlan plan, Timeline timeline) {
    steps = plan.run();
    impressions = timeline.impressions();
    for (Task task : timeline.tasks()) {
      ends.merge(task.step(), task.end(), Moment::later);
    }
    byStep =
        impressions.stream()
            .collect(
                Collectors.groupingBy(Impression::step, LinkedHashMap::new, Collectors.toList()));
  }

  /** In order of laying. */
  List<Impression> impressions() {
    return impressions;
  }

  /** Those of one step, in order of laying. */
  List<Impression> impressions(int step) {
    return byStep.getOrDefault(step, List.of());
  }

  /** Of each placement the first print of each colour, in order of laying. */
  List<List<Impression>> motifs() {
    Map<Integer, Map<Integer, Impression>> all = new LinkedHashMap<>();
    for (Impression print : impressions) {
      all.computeIfAbsent(print.footprint().placement().id(), id -> new LinkedHashMap<>())
          .putIfAbsent(print.footprint().separation().number(), print);
    }
    return all.values().stream().map(motif -> List.copyOf(motif.values())).toList();
  }

  /** Numbers of the steps that printed anything, in the order they began to. */
  List<Integer> printSteps() {
    return List.copyOf(byStep.keySet());
  }

  List<Step> steps() {
    return steps;
  }

  PlanPath path(int step) {
    return steps.get(step - 1).path();
  }

  /** By its number, from 1. */
  Step step(int number) {
    return steps.get(number - 1);
  }

  /** The first step after one number, up to before another one, that is of a kind. */
  Optional<Step> first(int after, int before, Predicate<Step> kind) {
    return steps.stream()
        .filter(s -> s.number() > after && s.number() < before)
        .filter(kind)
        .findFirst();
  }

  Optional<Step> firstAfter(int after, Predicate<Step> kind) {
    return first(after, Integer.MAX_VALUE, kind);
  }

  /** When the last task of a step ended; empty if it took no time at all. */
  Optional<Moment> end(int step) {
    return Optional.ofNullable(ends.get(step));
  }

  static boolean fixes(Step step) {
    return step instanceof Step.Fix;
  }

  static boolean sets(Step step) {
    return step instanceof Step.HeatSet;
  }

  static boolean washesOff(Step step) {
    return step instanceof Step.Wash;
  }

  static boolean rinses(Step step) {
    return step instanceof Step.Rinse || step instanceof Step.Wash;
  }

  /** Puts the cloth into water. */
  static boolean wets(Step step) {
    return rinses(step) || step instanceof Step.Fix fix && fix.wets();
  }
}
