package strikeoff.chemistry;

/**
 * Activity coefficients in a solution of soda and salt by Pitzer's equations, which hold at the
 * strength of a fixing bath, where the Debye–Hückel laws and Davies' formula (ionic strength up to
 * 0.5) do not. Sodium is the only cation.
 *
 * <p>Equations and parameters at 25 °C: Harvie, Møller & Weare 1984, Geochim. Cosmochim. Acta
 * 48:723. Their change with temperature: Peiper & Pitzer 1982, J. Chem. Thermodyn. 14:613, and
 * Silvester & Pitzer 1978, J. Solution Chem. 7:327, as in the U.S. Geological Survey's pitzer.dat.
 * Single ions are scaled by MacInnes' convention, γ(Cl⁻) = γ±(KCl) at the same ionic strength,
 * since that is the scale on which pH buffers are assigned.
 */
final class Pitzer {

  /** The anions, by their charge without its sign. */
  enum Anion {
    HYDROXIDE(1),
    BICARBONATE(1),
    CARBONATE(2),
    CHLORIDE(1),
    SULPHATE(2);

    final int charge;

    Anion(int charge) {
      this.charge = charge;
    }
  }

  private static final double LN10 = Math.log(10);

  /** Pitzer's b, kg^½ mol^-½, the same for all electrolytes. */
  private static final double B = 1.2;

  // Interaction of unlike anions, in the order of the enum, Harvie & al. 1984; without a known
  // change by temperature.
  private static final double[][] THETA = {
    {0, 0, 0.10, -0.05, -0.013},
    {0, 0, -0.04, 0.03, 0.01},
    {0.10, -0.04, 0, -0.02, 0.02},
    {-0.05, 0.03, -0.02, 0, 0.02},
    {-0.013, 0.01, 0.02, 0.02, 0}
  };
  private static final double[][] PSI_WITH_SODIUM = {
    {0, 0, -0.017, -0.006, -0.009},
    {0, 0, 0.002, -0.015, -0.005},
    {-0.017, 0.002, 0, 0.0085, -0.005},
    {-0.006, -0.015, 0.0085, 0, 0.0014},
    {-0.009, -0.005, -0.005, 0.0014, 0}
  };

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
  private final Salt[] withSodium;
  private final Salt potassiumChloride;

  Pitzer(double celsius) {
    double dt = celsius - 25;
    slope = Water.debyeHueckel(celsius) * LN10 / 3;
    withSodium =
        new Salt[] {
          Salt.of(0.0864 + 7.00e-4 * dt, 0.253 + 1.34e-4 * dt, 0.0044 - 1.894e-4 * dt, 1),
          Salt.of(0.0277 + 1.00e-3 * dt, 0.0411 + 1.10e-3 * dt, 0, 1),
          Salt.of(0.0399 + 1.79e-3 * dt, 1.389 + 2.05e-3 * dt, 0.0044, 2),
          sodiumChloride(celsius),
          Salt.of(0.01958 + 2.367e-3 * dt, 1.113 + 5.6325e-3 * dt, 0.00497 - 4.87904e-4 * dt, 2)
        };
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

  /** Coefficients in water without salt. Molalities in; sodium balances the charges. */
  Coefficients at(double hydroxide, double bicarbonate, double carbonate) {
    return at(hydroxide, bicarbonate, carbonate, SaltWater.NONE);
  }

  /** Molalities in, coefficients out; sodium balances the charges. */
  Coefficients at(double hydroxide, double bicarbonate, double carbonate, SaltWater salt) {
    double[] molal = {hydroxide, bicarbonate, carbonate, salt.chloride(), salt.sulphate()};
    double sodium = 0;
    double strength = 0;
    for (Anion anion : Anion.values()) {
      sodium += molal[anion.ordinal()] * anion.charge;
      strength += molal[anion.ordinal()] * anion.charge * anion.charge;
    }
    strength = (strength + sodium) / 2;
    double root = Math.sqrt(strength);
    double x = 2 * root;
    double g = 2 * (1 - (1 + x) * Math.exp(-x)) / (x * x);
    double slopeOfG = -2 * (1 - (1 + x + x * x / 2) * Math.exp(-x)) / (x * x) / strength;
    double debye = -slope * (root / (1 + B * root) + 2 / B * Math.log(1 + B * root));
    Unlike unlike = Unlike.of(slope, strength);

    double common = debye;
    double ternary = 0;
    for (Anion anion : Anion.values()) {
      int i = anion.ordinal();
      common += sodium * molal[i] * slopeOfG * withSodium[i].beta1;
      ternary += sodium * molal[i] * withSodium[i].c;
      for (Anion other : Anion.values()) {
        boolean pair = anion.ordinal() < other.ordinal() && anion.charge != other.charge;
        common += pair ? molal[i] * molal[other.ordinal()] * unlike.derivative : 0;
      }
    }
    double[] logs = new double[molal.length];
    for (Anion anion : Anion.values()) {
      int i = anion.ordinal();
      Salt own = withSodium[i];
      logs[i] =
          anion.charge * anion.charge * common
              + sodium * (2 * second(own, g) + 2 * sodium * own.c)
              + anion.charge * ternary;
      for (Anion other : Anion.values()) {
        int j = other.ordinal();
        double mixing = THETA[i][j] + (anion.charge == other.charge ? 0 : unlike.value);
        logs[i] += i == j ? 0 : molal[j] * (2 * mixing + sodium * PSI_WITH_SODIUM[i][j]);
      }
    }
    double ofPotassiumChloride =
        debye
            + strength * strength * slopeOfG * potassiumChloride.beta1
            + strength * 2 * second(potassiumChloride, g)
            + 3 * strength * strength * potassiumChloride.c;
    double macInnes = ofPotassiumChloride - logs[Anion.CHLORIDE.ordinal()];
    return new Coefficients(
        (logs[Anion.HYDROXIDE.ordinal()] + macInnes) / LN10,
        (logs[Anion.BICARBONATE.ordinal()] + macInnes) / LN10,
        (logs[Anion.CARBONATE.ordinal()] + 2 * macInnes) / LN10,
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
