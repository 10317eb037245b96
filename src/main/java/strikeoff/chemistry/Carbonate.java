package strikeoff.chemistry;

import static strikeoff.chemistry.Temperatures.kelvin;

/**
 * Constants of the carbonate equilibria and of water, on the molal scale, and molar masses of the
 * sodas.
 *
 * <p>pK1 and pK2: Plummer & Busenberg 1982, Geochim. Cosmochim. Acta 46:1011, 0–90 °C. pKw: the fit
 * in the U.S. Geological Survey's data base wateq4f.
 */
public final class Carbonate {

  /** Na₂CO₃ without water, g/mol. IUPAC atomic weights, as all of these. */
  public static final double ANHYDROUS = 105.9875;

  /** Na₂CO₃·H₂O, g/mol. */
  public static final double MONOHYDRATE = 124.0025;

  /** Na₂CO₃·10 H₂O, washing soda, g/mol. */
  public static final double DECAHYDRATE = 286.1375;

  /** NaHCO₃, baking soda, g/mol. */
  public static final double BICARBONATE = 84.0066;

  /**
   * Difference between the pK2 that the Geological Survey ships with its Pitzer data base and the
   * one of the publication. The activity model was fitted with this one: with it the NBS carbonate
   * buffer comes out right within 0.01 at 0–50 °C.
   */
  private static final double PITZER_OFFSET = 0.0104;

  private Carbonate() {}

  /** First dissociation of carbonic acid, CO₂ + H₂O ⇌ H⁺ + HCO₃⁻. */
  public static double pK1(double celsius) {
    return -fit(celsius, -356.3094, -0.06091964, 21834.37, 126.8339, -1684915);
  }

  /** Second dissociation, HCO₃⁻ ⇌ H⁺ + CO₃²⁻, as published. */
  public static double pK2(double celsius) {
    return -fit(celsius, -107.8871, -0.03252849, 5151.79, 38.92561, -563713.9);
  }

  /** The second dissociation to use with {@link Pitzer}. */
  static double pK2WithPitzer(double celsius) {
    return pK2(celsius) + PITZER_OFFSET;
  }

  /** Dissociation of water. */
  public static double pKw(double celsius) {
    return -fit(celsius, -283.971, -0.05069842, 13323.0, 102.24447, -1119669);
  }

  private static double fit(double celsius, double a, double b, double c, double d, double e) {
    double kelvin = kelvin(celsius);
    return a + b * kelvin + c / kelvin + d * Math.log10(kelvin) + e / (kelvin * kelvin);
  }
}
