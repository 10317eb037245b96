package strikeoff.units;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * In whose units figures are told, for each kind of measure. It is the plan's own way of writing,
 * or what the user asks for; whatever tells a figure is given it.
 *
 * @param systems one for each kind
 */
public record Measures(Map<MeasureKind, UnitSystem> systems) {

  /** All in metric units, as figures for other programs are. */
  public static final Measures METRIC = allIn(UnitSystem.METRIC);

  /** All in US units, but for threads, which labels give in micrometres there as well. */
  public static final Measures US = allIn(UnitSystem.US);

  /** All in imperial units, but for threads likewise. */
  public static final Measures IMPERIAL = allIn(UnitSystem.IMPERIAL);

  /**
   * @throws IllegalArgumentException if a kind is missing
   */
  public Measures {
    EnumMap<MeasureKind, UnitSystem> copy = new EnumMap<>(MeasureKind.class);
    copy.putAll(systems);
    if (copy.size() < MeasureKind.values().length) {
      throw new IllegalArgumentException("not for every kind: " + copy);
    }
    systems = Collections.unmodifiableMap(copy);
  }

  /** Those in which some quantities are written, most of them deciding. */
  public static Measures of(Collection<WrittenIn> written) {
    MeasuresTally tally = new MeasuresTally();
    int at = 0;
    for (WrittenIn one : written) {
      tally.add(one, at++);
    }
    return tally.measures();
  }

  private static Measures allIn(UnitSystem system) {
    EnumMap<MeasureKind, UnitSystem> all = new EnumMap<>(MeasureKind.class);
    for (MeasureKind kind : MeasureKind.values()) {
      all.put(kind, kind == MeasureKind.THICKNESS ? UnitSystem.METRIC : system);
    }
    return new Measures(all);
  }

  /** Whose units a kind is told in. */
  public UnitSystem of(MeasureKind kind) {
    return systems.get(kind);
  }

  /** True if all kinds are told in metric units. */
  public boolean allMetric() {
    for (UnitSystem system : systems.values()) {
      if (system != UnitSystem.METRIC) {
        return false;
      }
    }
    return true;
  }

  /** True if a kind is told in metric units. */
  boolean metric(MeasureKind kind) {
    return of(kind) == UnitSystem.METRIC;
  }

  /** The scale that a kind is told on; empty for metric ones, whose quantities tell themselves. */
  Optional<Scale> scale(MeasureKind kind) {
    return Scale.of(kind, of(kind));
  }

  /**
   * The same with another system for what is not written: a concentration is told like a mass, and
   * all else like a length; without lengths, in metric units. Threads are sold by the micrometre
   * everywhere (common practice, no source), so they are told so unless they are written in inches.
   */
  static Measures filledUp(Map<MeasureKind, UnitSystem> written) {
    UnitSystem lengths = written.getOrDefault(MeasureKind.LENGTH, UnitSystem.METRIC);
    EnumMap<MeasureKind, UnitSystem> all = new EnumMap<>(MeasureKind.class);
    for (MeasureKind kind : MeasureKind.values()) {
      UnitSystem like =
          switch (kind) {
            case THICKNESS, CLOTH_LENGTH -> UnitSystem.METRIC;
            case CONCENTRATION -> written.getOrDefault(MeasureKind.MASS, lengths);
            default -> lengths;
          };
      all.put(kind, written.getOrDefault(kind, like));
    }
    return new Measures(all);
  }
}
