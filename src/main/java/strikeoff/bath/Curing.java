package strikeoff.bath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * Paint that is dry through when it is heat-set.
 *
 * @param step number of the heat-set
 * @param films how many films are concerned
 * @param stood how long the last of them has stood
 * @param marks placements concerned
 * @param path of the step
 */
public record Curing(
    int step, List<String> paints, int films, Span stood, List<String> marks, PlanPath path)
    implements Evidence {

  public Curing {
    paints = List.copyOf(paints);
    marks = List.copyOf(marks);
  }

  static List<Curing> all(FixingRun work) {
    List<Curing> all = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.HeatSet heat) {
        work.start(heat).ifPresent(from -> of(work, heat, from).ifPresent(all::add));
      }
    }
    return all;
  }

  private static Optional<Curing> of(FixingRun work, Step.HeatSet heat, Moment from) {
    List<Impression> dry =
        work.impressions(Medium.PAINT, i -> i.step() < heat.number()).stream()
            .filter(i -> i.film().fixSafe().latest().compareTo(from) <= 0)
            .toList();
    return dry.stream()
        .max(Comparator.comparing(Impression::lifted))
        .map(
            last ->
                new Curing(
                    heat.number(),
                    FixingRun.names(FixingRun.pastes(dry)),
                    dry.size(),
                    from.since(last.lifted()),
                    FixingRun.placements(dry),
                    heat.path()));
  }
}
