package strikeoff.units;

import java.util.EnumMap;
import java.util.Map;

/** Counts how the quantities of one plan are written, and so learns in whose units to answer. */
public final class MeasuresTally {

  private final Map<MeasureKind, Map<UnitSystem, Count>> counts = new EnumMap<>(MeasureKind.class);

  private record Count(int times, long first) {

    Count and(Count other) {
      return new Count(times + other.times, Math.min(first, other.first));
    }

    boolean beats(Count other) {
      return times > other.times || times == other.times && first < other.first;
    }
  }

  /**
   * Counts a quantity.
   *
   * @param at where it stands; grows down the plan
   */
  public void add(WrittenIn written, long at) {
    counts
        .computeIfAbsent(written.kind(), k -> new EnumMap<>(UnitSystem.class))
        .merge(written.system(), new Count(1, at), Count::and);
  }

  /**
   * For each kind the system that most of its quantities are written in, of two alike the one
   * written first.
   */
  public Measures measures() {
    Map<MeasureKind, UnitSystem> most = new EnumMap<>(MeasureKind.class);
    counts.forEach(
        (kind, bySystem) -> {
          Map.Entry<UnitSystem, Count> best = null;
          for (Map.Entry<UnitSystem, Count> one : bySystem.entrySet()) {
            if (best == null || one.getValue().beats(best.getValue())) {
              best = one;
            }
          }
          most.put(kind, best.getKey());
        });
    return Measures.filledUp(most);
  }
}
