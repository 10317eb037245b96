package strikeoff.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Finds the listed colour that is nearest to a look, without comparing it with all of them: from
 * the look's own lightness outwards, until the lightness alone is further off than the nearest yet.
 *
 * <p>That bound is exact. In CIEDE2000 the terms of chroma and hue together are never below zero,
 * since the factor of their product stays within ±2; and the difference in lightness is divided by
 * at most 1 + 0.015 · 50² / √(20 + 50²), its weight at black and at white.
 */
final class NearestSwatch {

  private static final double MOST_LIGHTNESS_WEIGHT = 1 + 0.015 * 2500 / Math.sqrt(2520);

  private final List<Listed> byLightness = new ArrayList<>();

  private record Listed(int order, Swatch swatch) {

    double lightness() {
      return swatch.onGroundLab().lightness();
    }
  }

  /** The nearest one and how far it is. */
  record Found(Swatch swatch, double difference) {}

  NearestSwatch(List<Swatch> swatches) {
    for (Swatch swatch : swatches) {
      byLightness.add(new Listed(byLightness.size(), swatch));
    }
    byLightness.sort(Comparator.comparingDouble(Listed::lightness));
  }

  /** The nearest of those that count; of several as near, the first one listed. */
  Optional<Found> to(Lab look, Predicate<Swatch> counts) {
    int up = firstNotDarkerThan(look.lightness());
    int down = up - 1;
    Listed nearest = null;
    double least = Double.POSITIVE_INFINITY;
    while (down >= 0 || up < byLightness.size()) {
      double below = down < 0 ? Double.POSITIVE_INFINITY : off(down, look);
      double above = up >= byLightness.size() ? Double.POSITIVE_INFINITY : off(up, look);
      if (Math.min(below, above) > least) {
        break;
      }
      Listed next = byLightness.get(below < above ? down-- : up++);
      if (counts.test(next.swatch)) {
        double difference = next.swatch.onGroundLab().difference(look);
        if (difference < least || difference == least && next.order < nearest.order) {
          nearest = next;
          least = difference;
        }
      }
    }
    return nearest == null ? Optional.empty() : Optional.of(new Found(nearest.swatch, least));
  }

  /** The least difference that the lightness alone makes. */
  private double off(int index, Lab look) {
    return Math.abs(byLightness.get(index).lightness() - look.lightness()) / MOST_LIGHTNESS_WEIGHT;
  }

  private int firstNotDarkerThan(double lightness) {
    int from = 0;
    int to = byLightness.size();
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (byLightness.get(middle).lightness() < lightness) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from;
  }
}
