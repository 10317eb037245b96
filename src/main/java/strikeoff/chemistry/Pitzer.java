package strikeoff.chemistry;

/**
 * Activity coefficients in a solution of soda by Pitzer's equations, which hold at the strength of
 * a fixing bath, where the Debye–Hückel laws and Davies' formula (ionic strength up to 0.5) do not.
 *
 * <p>Equations and parameters at 25 °C: Harvie, Møller & Weare 1984, Geochim. Cosmochim. Acta
 * 48:723. Their change with temperature: Peiper & Pitzer 1982, J. Chem. Thermodyn. 14:613, and
 * Silvester & Pitzer 1978, J. Solution Chem. 7:327, as in the U.S. Geological Survey's pitzer.dat.
 * Single ions are scaled by MacInnes' convention, γ(Cl⁻) = γ±(KCl) at the same ionic strength,
 * since that is the scale on which pH buffers are assigned.
 */
final class Pitzer {

  private static final double LN10 = Math.log(10);

  /** Pitzer's b, kg^½ mol^-½, the same for all electrolytes. */
  private static final double B = 1.2;

  // Interaction of unlike anions, Harvie & al. 1984; without a known change by temperature.
  private static final double THETA_OH_CO3 = 0.10;
  private static final double THETA_HCO3_CO3 = -0.04;
  private static final double THETA_CL_CO3 = -0.02;
  private static final double THETA_CL_HCO3 = 0.03;
  private static final double THETA_CL_OH = -0.05;
  private static final double PSI_OH_CO3_NA = -0.017;
  private static final double PSI_HCO3_CO3_NA = 0.002;
  private static final double PSI_CL_CO3_NA = 0.0085;
  private static final double PSI_CL_HCO3_NA = -0.015;
  private static final double PSI_CL_OH_NA = -0.006;

  /** One salt's parameters at a temperature; {@code c} is half of C^φ for salts of charge 1:1. */
  private record Salt(double beta0, double beta1, double c) {

    static Salt of(double beta0, double beta1, double cPhi, int anionCharge) {
      return new Salt(beta0, beta1, cPhi / (2 * Math.sqrt(anionCharge)));
    }
  }

  /**
   * Decimal logarithms of the activity coefficients.
   *
   * @param ionicStrength mol/kg
   */
  record Coefficients(
      double hydroxide, double bicarbonate, double carbonate, double ionicStrength) {}

  private final double slope;
  private final Salt hydroxideSalt;
  private final Salt bicarbonateSalt;
  private final Salt carbonateSalt;
  private final Salt chlorideSalt;
  private final Salt potassiumChloride;

  Pitzer(double celsius) {
    double dt = celsius - 25;
    slope = Water.debyeHueckel(celsius) * LN10 / 3;
    hydroxideSalt = Salt.of(0.0864 + 7.00e-4 * dt, 0.253 + 1.34e-4 * dt, 0.0044 - 1.894e-4 * dt, 1);
    bicarbonateSalt = Salt.of(0.0277 + 1.00e-3 * dt, 0.0411 + 1.10e-3 * dt, 0, 1);
    carbonateSalt = Salt.of(0.0399 + 1.79e-3 * dt, 1.389 + 2.05e-3 * dt, 0.0044, 2);
    chlorideSalt = sodiumChloride(celsius);
    potassiumChloride =
        Salt.of(0.04835 + 5.794e-4 * dt, 0.2122 + 1.071e-3 * dt, -0.00084 - 5.095e-5 * dt, 1);
  }

  private static Salt sodiumChloride(double celsius) {
    double kelvin = Temperatures.kelvin(celsius);
    double reference = 298.15;
    double inverse = 1 / kelvin - 1 / reference;
    double logarithm = Math.log(kelvin / reference);
    double linear = kelvin - reference;
    double square = kelvin * kelvin - reference * reference;
    return Salt.of(
        0.0765 - 777.03 * inverse - 4.4706 * logarithm + 0.008946 * linear - 3.3158e-6 * square,
        0.2664 + 6.1608e-5 * linear + 1.0715e-6 * square,
        0.00127 + 33.317 * inverse + 0.09421 * logarithm - 4.655e-5 * linear,
        1);
  }

  /** Molalities in, coefficients out; sodium balances the charges. */
  Coefficients at(double hydroxide, double bicarbonate, double carbonate) {
    double sodium = hydroxide + bicarbonate + 2 * carbonate;
    double strength = (sodium + hydroxide + bicarbonate + 4 * carbonate) / 2;
    double root = Math.sqrt(strength);
    double x = 2 * root;
    double g = 2 * (1 - (1 + x) * Math.exp(-x)) / (x * x);
    double slopeOfG = -2 * (1 - (1 + x + x * x / 2) * Math.exp(-x)) / (x * x) / strength;
    Unlike unlike = Unlike.of(slope, strength);

    double debye = -slope * (root / (1 + B * root) + 2 / B * Math.log(1 + B * root));
    double common =
        debye
            + sodium
                * slopeOfG
                * (hydroxide * hydroxideSalt.beta1
                    + bicarbonate * bicarbonateSalt.beta1
                    + carbonate * carbonateSalt.beta1)
            + carbonate * (hydroxide + bicarbonate) * unlike.derivative;
    double ternary =
        sodium
            * (hydroxide * hydroxideSalt.c
                + bicarbonate * bicarbonateSalt.c
                + carbonate * carbonateSalt.c);
    double charge = 2 * sodium;

    double ofHydroxide =
        common
            + sodium * (2 * second(hydroxideSalt, g) + charge * hydroxideSalt.c)
            + carbonate * (2 * (THETA_OH_CO3 + unlike.value) + sodium * PSI_OH_CO3_NA)
            + ternary;
    double ofBicarbonate =
        common
            + sodium * (2 * second(bicarbonateSalt, g) + charge * bicarbonateSalt.c)
            + carbonate * (2 * (THETA_HCO3_CO3 + unlike.value) + sodium * PSI_HCO3_CO3_NA)
            + ternary;
    double ofCarbonate =
        4 * common
            + sodium * (2 * second(carbonateSalt, g) + charge * carbonateSalt.c)
            + hydroxide * (2 * (THETA_OH_CO3 + unlike.value) + sodium * PSI_OH_CO3_NA)
            + bicarbonate * (2 * (THETA_HCO3_CO3 + unlike.value) + sodium * PSI_HCO3_CO3_NA)
            + 2 * ternary;
    double ofChloride =
        common
            + sodium * (2 * second(chlorideSalt, g) + charge * chlorideSalt.c)
            + carbonate * (2 * (THETA_CL_CO3 + unlike.value) + sodium * PSI_CL_CO3_NA)
            + bicarbonate * (2 * THETA_CL_HCO3 + sodium * PSI_CL_HCO3_NA)
            + hydroxide * (2 * THETA_CL_OH + sodium * PSI_CL_OH_NA)
            + ternary;
    double ofPotassiumChloride =
        debye
            + strength * strength * slopeOfG * potassiumChloride.beta1
            + strength * 2 * second(potassiumChloride, g)
            + 3 * strength * strength * potassiumChloride.c;

    double macInnes = ofPotassiumChloride - ofChloride;
    return new Coefficients(
        (ofHydroxide + macInnes) / LN10,
        (ofBicarbonate + macInnes) / LN10,
        (ofCarbonate + 2 * macInnes) / LN10,
        strength);
  }

  private static double second(Salt salt, double g) {
    return salt.beta0 + salt.beta1 * g;
  }

  /**
   * The electrostatic part of the mixing of an anion of charge 1 with one of charge 2: Pitzer 1975,
   * J. Solution Chem. 4:249, with his approximation of the function J.
   *
   * @param derivative by ionic strength
   */
  private record Unlike(double value, double derivative) {

    static Unlike of(double slope, double strength) {
      double unit = 6 * slope * Math.sqrt(strength);
      double value = (j(2 * unit) - j(unit) / 2 - j(4 * unit) / 2) / (2 * strength);
      double byX = 2 * unit * slopeOfJ(2 * unit) - unit * slopeOfJ(unit) / 2;
      double rest = byX - 4 * unit * slopeOfJ(4 * unit) / 2;
      return new Unlike(value, -value / strength + rest / (4 * strength * strength));
    }

    private static double j(double x) {
      return x / (4 + 4.581 * Math.pow(x, -0.7237) * Math.exp(-0.0120 * Math.pow(x, 0.528)));
    }

    private static double slopeOfJ(double x) {
      double power = Math.pow(x, 0.528);
      double term = 4.581 * Math.pow(x, -0.7237) * Math.exp(-0.0120 * power);
      double nominator = 4 + term;
      double slopeOfTerm = term * (-0.7237 - 0.0120 * 0.528 * power) / x;
      return (nominator - x * slopeOfTerm) / (nominator * nominator);
    }
  }
}
