package strikeoff.units;

/** A temperature in degrees Celsius. */
public record Temperature(double celsius) implements Quantity, Comparable<Temperature> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Temperature {
    Numbers.requireFinite(celsius, "Temperature");
  }

  @Override
  public double base() {
    return celsius;
  }

  @Override
  public String text() {
    return Numbers.plain(celsius, 1) + " °C";
  }

  @Override
  public String text(Measures units) {
    return units.scale(MeasureKind.TEMPERATURE).map(s -> s.text(celsius)).orElseGet(this::text);
  }

  /**
   * Told as what is enough: never less than it is, in steps that a dial or a thermometer is read
   * in, 5 °F. Degrees Celsius stay as they are said.
   */
  public String enough(Measures units) {
    return rounded(units, Scale.To.UP).text(units);
  }

  /** The same as what is the most. */
  public String most(Measures units) {
    return rounded(units, Scale.To.DOWN).text(units);
  }

  /** So many degrees more or less, {@code 5 °C} or {@code 9 °F}: no temperature itself. */
  public static String difference(double celsius, Measures units) {
    return units.metric(MeasureKind.TEMPERATURE)
        ? new Temperature(celsius).text()
        : Numbers.plain(celsius * 9 / 5, 0) + " °F";
  }

  private Temperature rounded(Measures units, Scale.To to) {
    return units
        .scale(MeasureKind.TEMPERATURE)
        .map(s -> new Temperature(s.rounded(celsius, to)))
        .orElse(this);
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(celsius, other.celsius);
  }

  @Override
  public String toString() {
    return text();
  }
}
