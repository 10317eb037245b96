package strikeoff.units;

/** A volume in litres. */
public record Volume(double litres) implements Quantity, Comparable<Volume> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Volume {
    Numbers.requireFinite(litres, "Volume");
  }

  public double ml() {
    return litres * 1000;
  }

  @Override
  public double base() {
    return litres;
  }

  @Override
  public String text() {
    return Math.abs(litres) >= 1
        ? Numbers.plain(litres, 1) + " L"
        : Numbers.plain(litres * 1000, 0) + " ml";
  }

  @Override
  public String text(Measures units) {
    return units.scale(MeasureKind.VOLUME).map(s -> s.text(litres)).orElseGet(this::text);
  }

  /** As it is said, but never less than it is. */
  public String roundedUp(Measures units) {
    return up(units).text(units);
  }

  /** As it is said, but never more than it is. */
  public String roundedDown(Measures units) {
    return down(units).text(units);
  }

  /**
   * Told as what is enough, where it is worked out in steps of metric units already: never less
   * than it is in other ones.
   */
  public String enough(Measures units) {
    return units.scale(MeasureKind.VOLUME).isPresent() ? roundedUp(units) : text();
  }

  /** The same as what is the most. */
  public String most(Measures units) {
    return units.scale(MeasureKind.VOLUME).isPresent() ? roundedDown(units) : text();
  }

  /** What {@link #roundedUp} says. */
  public Volume up(Measures units) {
    return new Volume(
        units
            .scale(MeasureKind.VOLUME)
            .map(s -> s.rounded(litres, Scale.To.UP))
            .orElseGet(() -> Math.ceil(litres / said() - 1e-6) * said()));
  }

  /** What {@link #roundedDown} says. */
  public Volume down(Measures units) {
    return new Volume(
        units
            .scale(MeasureKind.VOLUME)
            .map(s -> s.rounded(litres, Scale.To.DOWN))
            .orElseGet(() -> Math.floor(litres / said() + 1e-6) * said()));
  }

  /** The last figure of the text, in litres. */
  private double said() {
    return Math.abs(litres) >= 1 ? 0.1 : 0.001;
  }

  @Override
  public int compareTo(Volume other) {
    return Double.compare(litres, other.litres);
  }

  @Override
  public String toString() {
    return text();
  }
}
