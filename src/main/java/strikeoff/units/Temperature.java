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
  public int compareTo(Temperature other) {
    return Double.compare(celsius, other.celsius);
  }

  @Override
  public String toString() {
    return text();
  }
}
