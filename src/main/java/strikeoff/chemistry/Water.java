package strikeoff.chemistry;

/** Properties of pure water at atmospheric pressure that the activity model needs. */
public final class Water {

  private Water() {}

  /** Density in kg/L from 0 to 100 °C. Kell 1975, J. Chem. Eng. Data 20:97; better than 0.001 %. */
  public static double density(double celsius) {
    double t = celsius;
    double numerator =
        999.83952
            + t
                * (16.945176
                    + t
                        * (-7.9870401e-3
                            + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
    return numerator / (1 + 16.879850e-3 * t) / 1000;
  }

  /** Relative permittivity from 0 to 100 °C. Malmberg & Maryott 1956, J. Res. NBS 56:1. */
  public static double permittivity(double celsius) {
    double t = celsius;
    return 87.740 + t * (-0.40008 + t * (9.398e-4 - t * 1.410e-6));
  }

  /**
   * The Debye–Hückel slope A for decimal logarithms, in kg^½ mol^-½. 0.5108 at 25 °C; books that
   * take the older permittivity 78.54 print 0.509.
   */
  public static double debyeHueckel(double celsius) {
    double kelvin = Temperatures.kelvin(celsius);
    return 1.82483e6 * Math.sqrt(density(celsius)) * Math.pow(permittivity(celsius) * kelvin, -1.5);
  }
}
