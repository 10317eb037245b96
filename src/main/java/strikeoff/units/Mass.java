package strikeoff.units;

/** A mass in grams. */
public record Mass(double grams) implements Quantity, Comparable<Mass> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Mass {
    Numbers.requireFinite(grams, "Mass");
  }

  public double kilograms() {
    return grams / 1000;
  }

  public Mass times(double factor) {
    return new Mass(grams * factor);
  }

  @Override
  public double base() {
    return grams;
  }

  @Override
  public String text() {
    return Math.abs(grams) >= 1000
        ? Numbers.plain(grams / 1000, 2) + " kg"
        : Numbers.plain(grams, Math.abs(grams) < 10 ? 1 : 0) + " g";
  }

  @Override
  public String text(Measures units) {
    return units.scale(MeasureKind.MASS).map(s -> s.text(grams)).orElseGet(this::text);
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
    return units.scale(MeasureKind.MASS).isPresent() ? roundedUp(units) : text();
  }

  /** The same as what is the most. */
  public String most(Measures units) {
    return units.scale(MeasureKind.MASS).isPresent() ? roundedDown(units) : text();
  }

  /** What {@link #roundedUp} says. */
  public Mass up(Measures units) {
    return new Mass(
        units
            .scale(MeasureKind.MASS)
            .map(s -> s.rounded(grams, Scale.To.UP))
            .orElseGet(() -> Math.ceil(grams / said() - 1e-6) * said()));
  }

  /** What {@link #roundedDown} says. */
  public Mass down(Measures units) {
    return new Mass(
        units
            .scale(MeasureKind.MASS)
            .map(s -> s.rounded(grams, Scale.To.DOWN))
            .orElseGet(() -> Math.floor(grams / said() + 1e-6) * said()));
  }

  /** The last figure of the text, in grams. */
  private double said() {
    return Math.abs(grams) >= 1000 ? 10 : Math.abs(grams) >= 10 ? 1 : 0.1;
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(grams, other.grams);
  }

  @Override
  public String toString() {
    return text();
  }
}
