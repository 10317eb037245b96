package strikeoff.units;

/** The speed of air over the cloth in m/s. */
public record AirSpeed(double metresPerSecond) implements Quantity, Comparable<AirSpeed> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public AirSpeed {
    Numbers.requireFinite(metresPerSecond, "AirSpeed");
  }

  @Override
  public double base() {
    return metresPerSecond;
  }

  @Override
  public String text() {
    return Numbers.plain(metresPerSecond, 2) + " m/s";
  }

  @Override
  public String text(Measures units) {
    return units
        .scale(MeasureKind.AIR_SPEED)
        .map(s -> s.text(metresPerSecond))
        .orElseGet(this::text);
  }

  @Override
  public int compareTo(AirSpeed other) {
    return Double.compare(metresPerSecond, other.metresPerSecond);
  }

  @Override
  public String toString() {
    return text();
  }
}
