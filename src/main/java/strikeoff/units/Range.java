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

  /** Scales all three; the factor must not be negative. */
  public Range times(double factor) {
    if (factor < 0) {
      throw new IllegalArgumentException("negative factor turns a range over: " + factor);
    }
    return new Range(low * factor, best * factor, high * factor);
  }
}
