package strikeoff.units;

/**
 * A best estimate with the range it may lie in. A limit crossed by the whole range is certain; one
 * crossed only by a part of it is a possibility. An exact value has all three alike.
 *
 * @param low the smallest credible value
 * @param best the most likely value
 * @param high the largest credible value
 */
public record Range(double low, double best, double high) {

  /**
   * @throws IllegalArgumentException unless low ≤ best ≤ high, all finite
   */
  public Range {
    Numbers.requireFinite(low, "low");
    Numbers.requireFinite(high, "high");
    if (!(low <= best && best <= high)) {
      throw new IllegalArgumentException("not in order: " + low + ", " + best + ", " + high);
    }
  }

  public static Range exactly(double value) {
    return new Range(value, value, value);
  }

  public boolean isExact() {
    return low == high;
  }

  public Range plus(Range other) {
    return new Range(low + other.low, best + other.best, high + other.high);
  }

  /**
   * The sum of values that are off independently of each other: the best of each, and away from it
   * the root of the squares, since not all of them are at their worst at once.
   */
  public static Range independent(Range... parts) {
    double below = 0;
    double best = 0;
    double above = 0;
    for (Range part : parts) {
      below = Math.hypot(below, part.best - part.low);
      best += part.best;
      above = Math.hypot(above, part.high - part.best);
    }
    return new Range(best - below, best, best + above);
  }

  /**
   * As it is told, to so many decimals: a figure that is told as the limit is not beyond it,
   * however its amounts were written.
   */
  public Range told(int decimals) {
    double units = Math.pow(10, decimals);
    return new Range(
        Math.rint(low * units) / units,
        Math.rint(best * units) / units,
        Math.rint(high * units) / units);
  }

  /** Scales all three; the factor must not be negative. */
  public Range times(double factor) {
    if (factor < 0) {
      throw new IllegalArgumentException("negative factor turns a range over: " + factor);
    }
    return new Range(low * factor, best * factor, high * factor);
  }
}
