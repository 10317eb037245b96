package strikeoff.units;

/** A plain number, for counts and ratios. */
public record Ratio(double value) implements Quantity, Comparable<Ratio> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Ratio {
    Numbers.requireFinite(value, "Ratio");
  }

  /** The nearest tenth, for figures that no eye or test strip tells more finely. */
  public static Ratio toTenth(double value) {
    return new Ratio(Math.rint(value * 10) / 10);
  }

  @Override
  public double base() {
    return value;
  }

  @Override
  public String text() {
    return Numbers.plain(value, 2);
  }

  /** The same in all units. */
  @Override
  public String text(Measures units) {
    return text();
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
