package strikeoff.units;

/** An area in square centimetres. */
public record Area(double squareCm) implements Quantity, Comparable<Area> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Area {
    Numbers.requireFinite(squareCm, "Area");
  }

  public double squareMetres() {
    return squareCm / 10_000;
  }

  @Override
  public double base() {
    return squareCm;
  }

  @Override
  public String text() {
    return squareCm >= 10_000
        ? Numbers.plain(squareCm / 10_000, 2) + " m²"
        : Numbers.plain(squareCm, 0) + " cm²";
  }

  @Override
  public String text(Measures units) {
    return units.scale(MeasureKind.AREA).map(s -> s.text(squareCm)).orElseGet(this::text);
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
