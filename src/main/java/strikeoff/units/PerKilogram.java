package strikeoff.units;

/**
 * Grams in a kilogram of paste, as recipes compare them. Who weighs in ounces is told ounces in a
 * pound.
 */
public final class PerKilogram {

  private static final double KILOGRAMS_IN_POUND = 0.45359237;

  private PerKilogram() {}

  /** As in {@code 20 g}, to be followed by {@code in} and {@link #whole}. */
  public static String text(double grams, Measures units) {
    return part(grams, units).text(units);
  }

  /** The number alone, where the second of two figures gives the unit of both. */
  public static String number(double grams, Measures units) {
    String text = text(grams, units);
    return text.substring(0, text.lastIndexOf(' '));
  }

  /** With the range that it may lie in, unless that is narrower than its figures. */
  public static String text(Range grams, Measures units) {
    String best = text(grams.best(), units);
    String low = text(grams.low(), units);
    String high = text(grams.high(), units);
    return low.equals(best) && high.equals(best) ? best : best + " (" + low + " to " + high + ")";
  }

  private static Mass part(double grams, Measures units) {
    return new Mass(isMetric(units) ? grams : grams * KILOGRAMS_IN_POUND);
  }

  /** {@code a kilogram}, or {@code a pound}. */
  public static String whole(Measures units) {
    return isMetric(units) ? "a kilogram" : "a pound";
  }

  /** What follows a ratio of masses: {@code g for each gram}. */
  public static String forEach(Measures units) {
    return isMetric(units) ? "g for each gram" : "oz for each ounce";
  }

  /** True if masses are told in grams. */
  public static boolean isMetric(Measures units) {
    return units.metric(MeasureKind.MASS);
  }
}
