package strikeoff.layout;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import strikeoff.plan.Arrangement;
import strikeoff.plan.GivenUp;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Area;

/** Finds the placements that lie on each other, by an index, and groups them by arrangements. */
final class Overlaps {

  /** The tool's own bound: where everything lies on everything, that much is told and no more. */
  private static final int MOST_LOOKED_AT = 1_000_000;

  private static final int MOST_MARKS = 100;

  private final PrintPlan plan;
  private final Layout layout;
  private final Map<String, Integer> order = new HashMap<>();
  private final Map<String, Set<String>> anchors = new HashMap<>();

  private Overlaps(PrintPlan plan, Layout layout) {
    this.plan = plan;
    this.layout = layout;
    plan.arrangements().keySet().forEach(name -> order.put(name, order.size()));
  }

  static List<Overlap> of(PrintPlan plan, Layout layout) {
    return new Overlaps(plan, layout).find();
  }

  private List<Overlap> find() {
    ClothIndex<Placement> index = new ClothIndex<>(layout.tube());
    layout.placements().forEach(p -> index.add(p.outline(), p));
    Map<Long, Found> found = new TreeMap<>();
    int lookedAt = 0;
    for (Placement later : layout.placements()) {
      GivenUp.ifAsked();
      List<Placement> near = index.near(later.outline(), 0);
      lookedAt += near.size();
      if (lookedAt > MOST_LOOKED_AT) {
        break;
      }
      for (Placement earlier : near) {
        // Only what stands earlier in the list, so that each pair is met once.
        if (earlier.id() < later.id() && strangers(earlier, later)) {
          Area area = layout.tube().overlap(earlier.outline(), later.outline());
          if (area.squareCm() > 0) {
            long key = ((long) order(later) << 32) | order(earlier);
            found.computeIfAbsent(key, k -> new Found()).add(earlier, later, area);
          }
        }
      }
    }
    boolean more = lookedAt > MOST_LOOKED_AT;
    return found.values().stream().map(one -> one.overlap(plan, more)).toList();
  }

  private int order(Placement placement) {
    return order.get(placement.arrangement());
  }

  /**
   * True unless one is set from the other or printed over it on purpose, or both are copies on one
   * lattice: those are judged by their pitch.
   */
  private boolean strangers(Placement one, Placement other) {
    if (one.arrangement().equals(other.arrangement())) {
      Arrangement own = plan.arrangements().get(one.arrangement());
      return own instanceof Arrangement.Placed || own instanceof Arrangement.Anchored;
    }
    return !over(one, other)
        && !over(other, one)
        && !anchorsOf(one.arrangement()).contains(other.arrangement())
        && !anchorsOf(other.arrangement()).contains(one.arrangement());
  }

  private boolean over(Placement upper, Placement lower) {
    return plan.arrangements().get(upper.arrangement()).over().contains(lower.arrangement());
  }

  private Set<String> anchorsOf(String name) {
    return anchors.computeIfAbsent(
        name,
        start -> {
          Set<String> chain = new HashSet<>();
          Arrangement at = plan.arrangements().get(start);
          while (at instanceof Arrangement.Anchored anchored && chain.add(anchored.anchor())) {
            at = plan.arrangements().get(anchored.anchor());
          }
          return chain;
        });
  }

  /** The overlaps of two arrangements. */
  private static final class Found {

    private int pairs;
    private Area largest = new Area(0);
    private Placement first;
    private Placement second;
    private final Set<String> marks = new LinkedHashSet<>();

    void add(Placement earlier, Placement later, Area area) {
      pairs++;
      if (marks.size() < MOST_MARKS) {
        marks.add(earlier.name());
        marks.add(later.name());
      }
      if (area.compareTo(largest) > 0) {
        largest = area;
        first = earlier;
        second = later;
      }
    }

    Overlap overlap(PrintPlan plan, boolean more) {
      return Overlap.of(
          plan.arrangements().get(second.arrangement()),
          plan.arrangements().get(first.arrangement()),
          pairs,
          more,
          first,
          second,
          largest,
          List.copyOf(marks));
    }
  }
}
