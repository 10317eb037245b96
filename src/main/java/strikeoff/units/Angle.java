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

  /** Its cosine, exact at quarter turns, so that a rectangle turned by 90° is a rectangle still. */
  public double cos() {
    return cosine(degrees - 360 * Math.floor(degrees / 360));
  }

  /** Its sine, exact at quarter turns. */
  public double sin() {
    return new Angle(degrees - 90).cos();
  }

  private static double cosine(double turn) {
    if (turn == 0) {
      return 1;
    }
    if (turn == 180) {
      return -1;
    }
    return turn == 90 || turn == 270 ? 0 : Math.cos(Math.toRadians(turn));
  }

  @Override
  public double base() {
    return degrees;
  }

  @Override
  public String text() {
    return Numbers.plain(degrees, 0) + "°";
  }

  /** The same in all units. */
  @Override
  public String text(Measures units) {
    return text();
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
