package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.timeline.Sets.Motif;
import strikeoff.timeline.Sets.PrintSet;

/** What a print step prints, split into sets in the order in which they are worked. */
final class PrintRun {

  private final PrintPlan plan;
  private final Layout layout;

  PrintRun(PrintPlan plan, Layout layout) {
    this.plan = plan;
    this.layout = layout;
  }

  /** The sets of one arrangement in a step; empty if nothing of it is printed there. */
  List<PrintSet> sets(Step.Print step, String arrangement) {
    return split(motifs(step, arrangement));
  }

  /** The sets of all arrangements of a step taken together. */
  List<PrintSet> setsTogether(Step.Print step) {
    List<Motif> all = new ArrayList<>();
    step.arrangements().forEach(arrangement -> all.addAll(motifs(step, arrangement)));
    return split(all);
  }

  private List<PrintSet> split(List<Motif> motifs) {
    int stations =
        plan.table().stations().map(s -> Math.max(1, s.count())).orElse(Integer.MAX_VALUE);
    double table = plan.table().length().mm();
    return Sets.split(
        motifs,
        table,
        stations,
        m -> Stations.stands(plan.arrangements().get(m.placement().arrangement())));
  }

  private List<Motif> motifs(Step.Print step, String arrangement) {
    List<Motif> motifs = new ArrayList<>();
    Set<Integer> only = Set.copyOf(step.only());
    for (Placement placement : layout.of(arrangement)) {
      if (only.isEmpty() || only.contains(placement.number())) {
        List<Footprint> colours = colours(step, placement);
        if (!colours.isEmpty()) {
          motifs.add(new Motif(placement, colours));
        }
      }
    }
    return motifs;
  }

  /** The designs a step prints. */
  List<Design> designs(Step.Print step) {
    return step.arrangements().stream()
        .map(plan.arrangements()::get)
        .filter(Objects::nonNull)
        .map(a -> plan.designs().get(a.design()))
        .distinct()
        .toList();
  }

  /** The screens a step uses. */
  Set<String> screens(Step.Print step) {
    Set<String> screens = new LinkedHashSet<>();
    for (String arrangement : step.arrangements()) {
      Arrangement placed = plan.arrangements().get(arrangement);
      if (placed != null) {
        for (Design.Separation separation : plan.designs().get(placed.design()).separations()) {
          if (step.separations().isEmpty() || step.separations().contains(separation.number())) {
            screens.add(separation.screen());
          }
        }
      }
    }
    return screens;
  }

  private List<Footprint> colours(Step.Print step, Placement placement) {
    List<Footprint> all = layout.footprintsOf(placement.id());
    if (step.separations().isEmpty()) {
      return all;
    }
    return step.separations().stream()
        .filter(number -> number >= 1 && number <= all.size())
        .map(number -> all.get(number - 1))
        .toList();
  }
}
