package strikeoff.layout;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;
import strikeoff.document.GivenUp;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Area;
import strikeoff.units.Share;

/** Finds the placements that lie on each other, by an index, and groups them by arrangements. */
final class Overlaps {

  /** The tool's own bound: where everything lies on everything, that much is told and no more. */
  private static final int MOST_LOOKED_AT = 1_000_000;

  /**
   * Pairs of arrangements that are told apart. Nobody reads as many, and of thousands that lie on
   * each other there would be millions.
   */
  private static final int MOST_FOUND = 5_000;

  private static final int MOST_MARKS = 100;

  private final PrintPlan plan;
  private final Layout layout;
  private final Map<String, Integer> order = new HashMap<>();
  private final Map<String, Integer> depths = new HashMap<>();

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
    boolean more = false;
    Set<String> notAll = new HashSet<>();
    for (Placement later : layout.placements()) {
      GivenUp.ifAsked();
      if (more) {
        notAll.add(later.arrangement());
        continue;
      }
      List<Placement> near = index.near(later.outline(), 0);
      lookedAt += near.size();
      more = lookedAt > MOST_LOOKED_AT || found.size() > MOST_FOUND;
      for (Placement earlier : near) {
        // Only what stands earlier in the list, so that each pair is met once.
        if (earlier.id() < later.id() && strangers(earlier, later)) {
          Geometry lower = layout.outline(earlier);
          Geometry upper = layout.outline(later);
          Area area = layout.tube().overlap(lower, upper);
          if (area.squareCm() > 0) {
            long key = ((long) order(later) << 32) | order(earlier);
            double smaller = Math.min(lower.getArea(), upper.getArea());
            found.computeIfAbsent(key, k -> new Found()).add(earlier, later, area, smaller);
          }
        }
      }
    }
    return found.values().stream().map(one -> one.overlap(plan, notAll)).toList();
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
        && !hangsOn(one.arrangement(), other.arrangement())
        && !hangsOn(other.arrangement(), one.arrangement());
  }

  private boolean over(Placement upper, Placement lower) {
    return plan.arrangements().get(upper.arrangement()).over().contains(lower.arrangement());
  }

  /** Whether one is set from another, or from what is set from it. */
  private boolean hangsOn(String name, String other) {
    String at = name;
    for (int up = depth(name) - depth(other); up > 0; up--) {
      at = ((Arrangement.Anchored) plan.arrangements().get(at)).anchor();
    }
    return !name.equals(other) && at.equals(other);
  }

  /** How many others it is set from, one from the other. */
  private int depth(String name) {
    Deque<String> above = new ArrayDeque<>();
    String at = name;
    while (!depths.containsKey(at)) {
      above.push(at);
      depths.put(at, 0);
      at = plan.arrangements().get(at) instanceof Arrangement.Anchored a ? a.anchor() : at;
    }
    while (!above.isEmpty()) {
      String below = above.pop();
      depths.put(below, below.equals(at) ? 0 : depths.get(at) + 1);
      at = below;
    }
    return depths.get(name);
  }

  /** The overlaps of two arrangements. */
  private static final class Found {

    private int pairs;
    private Area largest = new Area(0);
    private Share share = new Share(0);
    private Placement first;
    private Placement second;
    private final Set<String> marks = new LinkedHashSet<>();

    void add(Placement earlier, Placement later, Area area, double smaller) {
      pairs++;
      if (marks.size() < MOST_MARKS) {
        marks.add(earlier.name());
        marks.add(later.name());
      }
      if (area.compareTo(largest) > 0) {
        largest = area;
        share = new Share(Math.min(1, area.squareCm() * 100 / smaller));
        first = earlier;
        second = later;
      }
    }

    Overlap overlap(PrintPlan plan, Set<String> notAll) {
      return Overlap.of(
          plan.arrangements().get(second.arrangement()),
          plan.arrangements().get(first.arrangement()),
          pairs,
          notAll.contains(first.arrangement()) || notAll.contains(second.arrangement()),
          first,
          second,
          largest,
          share,
          List.copyOf(marks));
    }
  }
}
