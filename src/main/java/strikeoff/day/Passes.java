package strikeoff.day;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Sets.Motif;
import strikeoff.day.Sets.PrintSet;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintStep;

/** In which order a step works its arrangements, sets and colours. */
final class Passes {

  private Passes() {}

  /**
   * Colours of one set that are printed in a go.
   *
   * @param firstColour index of the first one in each motif's list
   * @param endColour index after the last one
   */
  record Pass(PrintSet set, int firstColour, int endColour) {

    static Pass whole(PrintSet set) {
      return new Pass(set, 0, set.motifs().get(0).colours().size());
    }
  }

  static List<Pass> of(PrintStep step, PrintRun run) {
    List<Pass> passes = new ArrayList<>();
    if (step.order() == PrintOrder.SET_BY_SET) {
      for (PrintSet set : run.setsTogether(step)) {
        byArrangement(set, step.arrangements()).forEach(part -> passes.add(Pass.whole(part)));
      }
      return passes;
    }
    for (String arrangement : step.arrangements()) {
      List<PrintSet> sets = run.sets(step, arrangement);
      if (step.order() == PrintOrder.OVER_ALL && !sets.isEmpty()) {
        int colours = sets.get(0).motifs().get(0).colours().size();
        for (int colour = 0; colour < colours; colour++) {
          for (PrintSet set : sets) {
            passes.add(new Pass(set, colour, colour + 1));
          }
        }
      } else {
        sets.forEach(set -> passes.add(Pass.whole(set)));
      }
    }
    return passes;
  }

  /** Motifs of one arrangement have as many colours; those of several may differ. */
  private static List<PrintSet> byArrangement(PrintSet set, List<String> order) {
    Map<String, List<Motif>> byName = new LinkedHashMap<>();
    order.forEach(name -> byName.put(name, new ArrayList<>()));
    for (Motif motif : set.motifs()) {
      byName.get(motif.placement().arrangement()).add(motif);
    }
    return byName.values().stream()
        .filter(motifs -> !motifs.isEmpty())
        .map(motifs -> new PrintSet(set.number(), motifs, set.from(), set.to()))
        .toList();
  }
}
