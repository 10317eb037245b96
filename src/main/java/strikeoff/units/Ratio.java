package strikeoff.units;

/** A plain number, for counts and ratios. */
public record Ratio(double value) implements Quantity, Comparable<Ratio> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Ratio {
    Numbers.requireFinite(value, "Ratio");
  }

  @Override
  public double base() {
    return value;
  }

  @Override
  public String text() {
    return Numbers.plain(value, 2);
  }

  @Override
  public int compareTo(Ratio other) {
    return Double.compare(value, other.value);
  }

  @Override
  public String toString() {
    return text();
  }
}
