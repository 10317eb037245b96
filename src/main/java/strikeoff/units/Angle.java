package strikeoff.units;

/** A turn in degrees, anticlockwise. */
public record Angle(double degrees) implements Quantity, Comparable<Angle> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Angle {
    Numbers.requireFinite(degrees, "Angle");
  }

  /** True if a rectangle turned by it lies square to where it lay. */
  public boolean square() {
    return degrees % 90 == 0;
  }

  @Override
  public double base() {
    return degrees;
  }

  @Override
  public String text() {
    return Numbers.plain(degrees, 0) + "°";
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(degrees, other.degrees);
  }

  @Override
  public String toString() {
    return text();
  }
}
