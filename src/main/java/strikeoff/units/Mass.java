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

  public Mass plus(Mass other) {
    return new Mass(grams + other.grams);
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

  /** As it is said, but never less than it is. */
  public String roundedUp() {
    return new Mass(Math.ceil(grams / said() - 1e-6) * said()).text();
  }

  /** As it is said, but never more than it is. */
  public String roundedDown() {
    return new Mass(Math.floor(grams / said() + 1e-6) * said()).text();
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
