package strikeoff.propose;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;

/** Which placements are printed before which, since they lie underneath. */
final class Underneath {

  private Underneath() {}

  /**
   * What is set from another, goes over it, or lands on it comes after it, as the plan has it.
   *
   * @param firstStep for an arrangement where in the run it is printed first
   * @return for the id of a placement those that are printed before it begins
   */
  static Map<Integer, Set<Integer>> of(
      PrintPlan plan, Layout layout, Map<String, Integer> firstStep) {
    Map<Integer, Set<Integer>> before = new HashMap<>();
    for (Placement one : layout.placements()) {
      one.anchor().ifPresent(a -> before.computeIfAbsent(one.id(), i -> new HashSet<>()).add(a));
    }
    List<Placement> all = layout.placements();
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        Placement one = all.get(i);
        Placement other = all.get(j);
        if (!one.arrangement().equals(other.arrangement()) && meet(one, other, layout)) {
          Arrangement first = plan.arrangements().get(one.arrangement());
          boolean turned =
              first.over().contains(other.arrangement())
                  || firstStep.getOrDefault(other.arrangement(), 0)
                      < firstStep.getOrDefault(one.arrangement(), 0);
          int earlier = turned ? other.id() : one.id();
          int later = turned ? one.id() : other.id();
          if (!before.getOrDefault(earlier, Set.of()).contains(later)) {
            before.computeIfAbsent(later, k -> new HashSet<>()).add(earlier);
          }
        }
      }
    }
    return before;
  }

  private static boolean meet(Placement one, Placement other, Layout layout) {
    if (!layout.tube().closed()
        && !one.outline().getEnvelopeInternal().intersects(other.outline().getEnvelopeInternal())) {
      return false;
    }
    for (Footprint a : layout.footprintsOf(one.id())) {
      for (Footprint b : layout.footprintsOf(other.id())) {
        if (layout.tube().overlaps(a.printed(), b.printed())) {
          return true;
        }
      }
    }
    return false;
  }
}
