package strikeoff.day;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import strikeoff.layout.Placement;
import strikeoff.layout.Tube;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/** On which station of the table each impression stands. */
public final class Stations {

  private static final Tube FLAT = new Tube(false, 1);

  private Stations() {}

  /**
   * Impressions by the number of their station, from 1, each station's in order of laying. A
   * placement stands on the station of its place in its set, counted along the cloth; what needs no
   * station is left out, and so is everything if the table has none.
   */
  public static Map<Integer, List<Impression>> of(PrintPlan plan, List<Impression> impressions) {
    Map<Integer, List<Impression>> byStation = new TreeMap<>();
    if (plan.table().stations().isEmpty()) {
      return byStation;
    }
    Set<Integer> together =
        plan.run().stream()
            .filter(s -> s instanceof PrintStep p && p.order() == PrintOrder.SET_BY_SET)
            .map(Step::number)
            .collect(Collectors.toSet());
    List<Impression> standing =
        impressions.stream()
            .filter(i -> plan.arrangements().get(arrangement(i)).takesBoard())
            .toList();
    Map<List<Object>, Set<Placement>> sets = new LinkedHashMap<>();
    for (Impression impression : standing) {
      sets.computeIfAbsent(set(impression, together), k -> new TreeSet<>(Sets.ALONG))
          .add(impression.footprint().placement());
    }
    Map<List<Object>, Map<Integer, Integer>> places = new LinkedHashMap<>();
    sets.forEach(
        (set, placements) -> {
          places.put(set, numbers(placements));
        });
    for (Impression impression : standing) {
      int station =
          places.get(set(impression, together)).get(impression.footprint().placement().id());
      byStation.computeIfAbsent(station, k -> new ArrayList<>()).add(impression);
    }
    return byStation;
  }

  /** Along the cloth; what is printed over another stands on the same station. */
  private static Map<Integer, Integer> numbers(Set<Placement> placements) {
    Map<Integer, Integer> numbers = new LinkedHashMap<>();
    List<Placement> firsts = new ArrayList<>();
    for (Placement placement : placements) {
      int under = 0;
      while (under < firsts.size()
          && !FLAT.overlaps(firsts.get(under).outline(), placement.outline())) {
        under++;
      }
      if (under == firsts.size()) {
        firsts.add(placement);
      }
      numbers.put(placement.id(), under + 1);
    }
    return numbers;
  }

  /** Arrangements of a step number their sets apart, unless it works set by set. */
  private static List<Object> set(Impression impression, Set<Integer> together) {
    String whose = together.contains(impression.step()) ? "" : arrangement(impression);
    return List.of(impression.step(), whose, impression.set());
  }

  private static String arrangement(Impression impression) {
    return impression.footprint().placement().arrangement();
  }
}
