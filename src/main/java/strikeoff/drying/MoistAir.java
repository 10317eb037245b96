package strikeoff.drying;

/**
 * Properties of water and moist air at sea level. Temperatures in °C, pressures in Pa.
 *
 * <p>Vapour pressure follows IAPWS-IF97 region 4 (0 to 373.946 °C, better than 0.03 %); the other
 * relations are those of the ASHRAE Handbook of Fundamentals 2017, chapter 1, good to about 0.5 %
 * in the range of rooms. A wet film in dry air may cool below freezing without turning to ice;
 * there the same equation is carried on to −40 °C, which at −10 °C lies within 0.1 % of the tables
 * of supercooled water. Air itself is never taken as colder than 0 °C.
 */
public final class MoistAir {

  /** Standard pressure at sea level in Pa. */
  public static final double PRESSURE = 101_325;

  private static final double DRY_GAS = 287.05; // J/(kg K)
  private static final double VAPOUR_GAS = 461.5;
  private static final double KELVIN = 273.15;
  private static final double FREEZING = 0.01; // triple point, lower end of IF97 region 4
  private static final double SUPERCOOLED = -40;
  private static final double HOTTEST = 100; // a film boils, no correlation here holds beyond

  private MoistAir() {}

  /** Pressure of saturated vapour over water; IAPWS-IF97 equation 30. */
  public static double saturation(double celsius) {
    double t = KELVIN + Math.max(SUPERCOOLED, celsius);
    double theta = t - 0.23855557567849 / (t - 650.17534844798);
    double a = theta * theta + 1167.0521452767 * theta - 724213.16703206;
    double b = -17.073846940092 * theta * theta + 12020.824702470 * theta - 3232555.0322333;
    double c = 14.915108613530 * theta * theta - 4823.2657361591 * theta + 405113.40542057;
    double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
    return Math.pow(root, 4) * 1e6;
  }

  /** Mass of vapour to a mass of dry air, from the vapour's pressure. */
  public static double humidityRatio(double vapourPressure) {
    return 0.621945 * vapourPressure / (PRESSURE - vapourPressure);
  }

  /** Mass of dry air in moist air, kg/m³. */
  static double dryDensity(double celsius, double vapourPressure) {
    return (PRESSURE - vapourPressure) / (DRY_GAS * (celsius + KELVIN));
  }

  /** Mass of vapour in moist air, kg/m³. */
  public static double vapourDensity(double celsius, double vapourPressure) {
    return vapourPressure / (VAPOUR_GAS * (celsius + KELVIN));
  }

  /** Mass of moist air, kg/m³. */
  static double density(double celsius, double vapourPressure) {
    return dryDensity(celsius, vapourPressure) + vapourDensity(celsius, vapourPressure);
  }

  /** Heat that evaporates water, kJ/kg; the linear form of FAO-56, within 0.1 % from 0 to 40 °C. */
  public static double latentHeat(double celsius) {
    return 2501 - 2.361 * celsius;
  }

  /**
   * Thermodynamic wet-bulb temperature: the coldest that moving air can make a wet film. ASHRAE
   * 2017 chapter 1, equation 33, solved by halving.
   */
  public static double wetBulb(double celsius, double relativeHumidity) {
    double wanted = humidityRatio(relativeHumidity * saturation(celsius));
    double cold = SUPERCOOLED;
    double warm = Math.max(FREEZING, celsius);
    for (int i = 0; i < 60; i++) {
      double tw = (cold + warm) / 2;
      double ratio =
          ((2501 - 2.326 * tw) * humidityRatio(saturation(tw)) - 1.006 * (celsius - tw))
              / (2501 + 1.86 * celsius - 4.186 * tw);
      if (ratio > wanted) {
        warm = tw;
      } else {
        cold = tw;
      }
    }
    return (cold + warm) / 2;
  }

  /** Keeps a temperature where the relations hold. */
  static double within(double celsius) {
    return Math.min(HOTTEST - 1, Math.max(FREEZING, celsius));
  }
}
