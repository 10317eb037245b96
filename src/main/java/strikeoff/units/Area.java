package strikeoff.units;

/** An area in square centimetres. */
public record Area(double squareCm) implements Quantity, Comparable<Area> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Area {
    Numbers.requireFinite(squareCm, "Area");
  }

  /** Less is told in square millimetres. */
  private static final double SMALL = 0.1;

  /** Less would be 0 in². */
  private static final double SMALLEST_IN_INCHES = 0.0323;

  public double squareMetres() {
    return squareCm / 10_000;
  }

  @Override
  public double base() {
    return squareCm;
  }

  @Override
  public String text() {
    if (squareCm > 0 && squareCm < SMALL) {
      return Numbers.plain(squareCm * 100, 2) + " mm²";
    }
    return squareCm >= 10_000
        ? Numbers.plain(squareCm / 10_000, 2) + " m²"
        : Numbers.plain(squareCm, 0) + " cm²";
  }

  @Override
  public String text(Measures units) {
    return squareCm > 0 && squareCm < SMALLEST_IN_INCHES
        ? text()
        : units.scale(MeasureKind.AREA).map(s -> s.text(squareCm)).orElseGet(this::text);
  }

  @Override
  public int compareTo(Area other) {
    return Double.compare(squareCm, other.squareCm);
  }

  @Override
  public String toString() {
    return text();
  }
}
