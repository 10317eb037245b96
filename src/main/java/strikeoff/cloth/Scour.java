package strikeoff.cloth;

import strikeoff.units.Measures;
import strikeoff.units.PerKilogram;
import strikeoff.units.Volume;

/** Soda and detergent that some cloth is scoured with. */
final class Scour {

  private static final Volume DETERGENT = new Volume(0.01);

  private Scour() {}

  /** In words, to be followed by {@code of cloth}: common practice, no source. */
  static String text(Measures units) {
    boolean metric = PerKilogram.isMetric(units);
    return (metric ? "20 g" : "0.7 oz")
        + " and "
        + DETERGENT.text(units)
        + " for "
        + (metric ? "450 g" : "a pound");
  }
}
