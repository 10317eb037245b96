package strikeoff.propose;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/**
 * What is printed in one part of a run.
 *
 * @param films of its impressions, in the order of the layout
 */
record OwnPrints(Set<Footprint> films) {

  /** What its steps print; in the last part all that the parts before it leave. */
  static OwnPrints of(PrintPlan plan, Layout layout, Phase phase) {
    Set<Footprint> own = new LinkedHashSet<>();
    if (phase.isLast()) {
      own.addAll(layout.footprints());
      phase.before(plan.run()).forEach(step -> own.removeAll(printed(step, layout)));
    } else {
      phase.own(plan.run()).forEach(step -> own.addAll(printed(step, layout)));
    }
    return new OwnPrints(own);
  }

  private static List<Footprint> printed(Step step, Layout layout) {
    List<Footprint> printed = new ArrayList<>();
    if (step instanceof PrintStep print) {
      for (String arrangement : print.arrangements()) {
        List<Integer> only = print.only(arrangement);
        for (Placement placement : layout.of(arrangement)) {
          if (only.isEmpty() || only.contains(placement.number())) {
            layout.footprintsOf(placement.id()).stream()
                .filter(f -> isOf(print, f.separation().number()))
                .forEach(printed::add);
          }
        }
      }
    }
    return printed;
  }

  private static boolean isOf(PrintStep print, int colour) {
    return print.separations().isEmpty() || print.separations().contains(colour);
  }

  Set<String> pastes() {
    return films.stream()
        .map(film -> film.paste().name())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  List<Placement> placements() {
    return films.stream().map(Footprint::placement).distinct().toList();
  }

  /**
   * Numbers of the colours of an arrangement that are printed in it anywhere, rising.
   *
   * @param all how many it has
   * @return none where they are all
   */
  List<Integer> colours(String arrangement, int all) {
    List<Integer> own =
        films.stream()
            .filter(film -> film.placement().arrangement().equals(arrangement))
            .map(film -> film.separation().number())
            .distinct()
            .sorted()
            .toList();
    return own.size() == all ? List.of() : own;
  }
}
