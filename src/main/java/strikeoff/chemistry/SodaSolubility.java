package strikeoff.chemistry;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * How much soda ash water takes up, in grams of anhydrous soda for 100 g of water.
 *
 * <p>Measured points from a compilation after Seidell and Comey & Hahn, 0–100 °C, straight lines
 * between them; good to 3 %. The peak lies at 35.4 °C, where the decahydrate turns into the
 * monohydrate; between 30 and 40 °C the lines run up to 5 % low.
 */
public final class SodaSolubility {

  private static final NavigableMap<Double, Double> POINTS =
      new TreeMap<>(
          Map.of(
              0.0, 7.0, 10.0, 12.2, 20.0, 21.8, 25.0, 29.4, 30.0, 39.7, 40.0, 48.8, 50.0, 47.3,
              60.0, 46.4, 80.0, 45.1, 100.0, 44.7));

  private SodaSolubility() {}

  /** Outside 0–100 °C the value at the nearer end: there is no liquid bath beyond. */
  public static double gramsPer100GramsOfWater(double celsius) {
    double t = Math.max(POINTS.firstKey(), Math.min(POINTS.lastKey(), celsius));
    Map.Entry<Double, Double> below = POINTS.floorEntry(t);
    Map.Entry<Double, Double> above = POINTS.ceilingEntry(t);
    if (below.getKey().equals(above.getKey())) {
      return below.getValue();
    }
    double part = (t - below.getKey()) / (above.getKey() - below.getKey());
    return below.getValue() + part * (above.getValue() - below.getValue());
  }

  /** The same in grams for each litre of water poured in. */
  public static double gramsPerLitreOfWater(double celsius) {
    double t = Math.max(POINTS.firstKey(), Math.min(POINTS.lastKey(), celsius));
    return gramsPer100GramsOfWater(t) * 10 * Water.density(t);
  }
}
