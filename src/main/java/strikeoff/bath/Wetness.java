package strikeoff.bath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import strikeoff.plan.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Reached;

/** Films that are still wet when a bath, steam or heat begins. */
final class Wetness {

  private final Work work;

  Wetness(Work work) {
    this.work = work;
  }

  List<Evidence> all() {
    List<Evidence> facts = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix && fix.how() != Step.Fixing.BATCH) {
        // A batch keeps the print damp on purpose.
        tooWet(fix, fix.how().text(), false, work.before(fix, Medium.DYE)).ifPresent(facts::add);
      } else if (step instanceof Step.HeatSet heat) {
        List<Impression> paint = work.impressions(Medium.PAINT, i -> i.step() < heat.number());
        tooWet(heat, "heat", true, paint).ifPresent(facts::add);
      }
    }
    return facts;
  }

  private Optional<TooWet> tooWet(
      Step step, String what, boolean heat, List<Impression> impressions) {
    Optional<Moment> start = work.start(step);
    if (start.isEmpty()) {
      return Optional.empty();
    }
    Moment from = start.get();
    List<Impression> wet =
        impressions.stream()
            .filter(i -> i.film().fixSafe().latest().compareTo(from) > 0)
            .filter(i -> !testedDry(i, step))
            .toList();
    if (wet.isEmpty()) {
      return Optional.empty();
    }
    Impression slowest =
        wet.stream().max(Comparator.comparing(i -> i.film().fixSafe().latest())).orElseThrow();
    Reached safe = slowest.film().fixSafe();
    return Optional.of(
        new TooWet(
            step.number(),
            what,
            heat,
            from,
            safe.latest(),
            latest(wet, Reached::earliest).since(from),
            latest(wet, Reached::best).since(from),
            safe.latest().since(from),
            wet.size(),
            Work.names(Work.pastes(wet)),
            Work.placements(wet),
            List.of(new Evidence.Related("the slowest film is printed here", slowest.path())),
            step.path()));
  }

  /** Who dries until fix-safe tests by touch: from then on the film is dry, whatever the range. */
  private boolean testedDry(Impression impression, Step step) {
    return work.plan().run().stream()
        .anyMatch(
            s ->
                s.number() > impression.step()
                    && s.number() < step.number()
                    && s instanceof Step.Dry dry
                    && dry.until() instanceof Until.State state
                    && state.dryness() == Until.Dryness.FIX_SAFE);
  }

  private static Moment latest(List<Impression> wet, Function<Reached, Moment> estimate) {
    return wet.stream()
        .map(i -> estimate.apply(i.film().fixSafe()))
        .max(Moment::compareTo)
        .orElseThrow();
  }
}
