package strikeoff.units;

/** A part of a whole, 1 for all of it. */
public record Share(double fraction) implements Quantity, Comparable<Share> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Share {
    Numbers.requireFinite(fraction, "Share");
  }

  public double percent() {
    return fraction * 100;
  }

  @Override
  public double base() {
    return fraction;
  }

  @Override
  public String text() {
    return Numbers.plain(fraction * 100, 1) + " %";
  }

  /** The same in all units. */
  @Override
  public String text(Measures units) {
    return text();
  }

  @Override
  public int compareTo(Share other) {
    return Double.compare(fraction, other.fraction);
  }

  @Override
  public String toString() {
    return text();
  }
}
