package strikeoff.sequence;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Impression;
import strikeoff.layout.Footprint;
import strikeoff.plan.PrintPlan;

/**
 * What is printed, and what lies over what: the run says so; in a plan without one, the order of
 * the design's list, anchors and what is printed over another on purpose.
 */
final class Stacking {

  private final PrintPlan plan;
  private final Map<Long, Integer> rank = new HashMap<>();

  /**
   * @param impressions of the run, in their order; none without a run
   */
  Stacking(PrintPlan plan, List<Impression> impressions) {
    this.plan = plan;
    impressions.forEach(i -> rank.putIfAbsent(number(i.footprint()), i.id()));
  }

  /** What is printed last comes first. */
  Comparator<Footprint> lastFirst() {
    return (a, b) -> Integer.compare(order(b), order(a));
  }

  private int order(Footprint footprint) {
    return rank.getOrDefault(number(footprint), 0);
  }

  boolean isPrinted(Footprint footprint) {
    return rank.isEmpty() || rank.containsKey(number(footprint));
  }

  /** Whether one is printed later than another that it meets. */
  boolean isOver(Footprint one, Footprint other) {
    if (!rank.isEmpty()) {
      return order(one) > order(other);
    }
    if (one.placement().id() == other.placement().id()) {
      return one.separation().number() > other.separation().number();
    }
    return isMeantOver(one, other);
  }

  /** Whether the plan says that one is printed over another, or sets it from that. */
  boolean isMeantOver(Footprint one, Footprint other) {
    String lower = other.placement().arrangement();
    return plan.arrangements().get(one.placement().arrangement()).over().contains(lower)
        || one.placement().anchor().stream().anyMatch(id -> id == other.placement().id());
  }

  /** One separation of one placement, in one number. */
  private static long number(Footprint footprint) {
    return (long) footprint.placement().id() << Integer.SIZE | footprint.separation().number();
  }
}
