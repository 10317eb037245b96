package strikeoff.chemistry;

import java.util.EnumMap;
import java.util.Map;

/**
 * Pitzer's excess Gibbs energy of a solution, as he wrote it down, and activity coefficients as its
 * slopes, taken by small steps: an oracle that shares no derived formula with {@link Pitzer}, nor
 * his approximation of the function J, which is integrated here.
 *
 * <p>Energy: Pitzer 1973, J. Phys. Chem. 77:268; J: Pitzer 1975, J. Solution Chem. 4:249;
 * parameters: Harvie, Møller & Weare 1984, with the temperature coefficients of the U.S. Geological
 * Survey's pitzer.dat.
 */
final class ExcessEnergy {

  /** Ions of the mixture, with charge. */
  enum Ion {
    SODIUM(1),
    POTASSIUM(1),
    HYDROXIDE(-1),
    BICARBONATE(-1),
    CARBONATE(-2),
    CHLORIDE(-1),
    SULPHATE(-2);

    final int charge;

    Ion(int charge) {
      this.charge = charge;
    }
  }

  private final double celsius;
  private final double debye;

  ExcessEnergy(double celsius) {
    this.celsius = celsius;
    debye = Water.debyeHueckel(celsius) * Math.log(10) / 3;
  }

  /** Molalities to energy over RT, for each kilogram of water. */
  double of(Map<Ion, Double> molal) {
    double strength = 0;
    double charges = 0;
    for (Map.Entry<Ion, Double> ion : molal.entrySet()) {
      strength += ion.getValue() * ion.getKey().charge * ion.getKey().charge / 2;
      charges += ion.getValue() * Math.abs(ion.getKey().charge);
    }
    double root = Math.sqrt(strength);
    double energy = -4 * debye * strength / 1.2 * Math.log(1 + 1.2 * root);
    for (Ion cation : molal.keySet()) {
      for (Ion anion : molal.keySet()) {
        if (cation.charge > 0 && anion.charge < 0) {
          double[] salt = salt(cation, anion);
          double x = 2 * root;
          double second = salt[0] + salt[1] * 2 / (x * x) * (1 - (1 + x) * Math.exp(-x));
          double third = salt[2] / (2 * Math.sqrt(-cation.charge * anion.charge));
          energy += 2 * molal.get(cation) * molal.get(anion) * (second + charges / 2 * third);
        }
      }
    }
    for (Ion one : molal.keySet()) {
      for (Ion other : molal.keySet()) {
        if (one.charge < 0 && other.charge < 0 && one.compareTo(other) < 0) {
          double[] pair = pair(one, other);
          double phi = pair[0] + unlike(one.charge, other.charge, strength);
          double sodium = molal.getOrDefault(Ion.SODIUM, 0.0);
          energy += molal.get(one) * molal.get(other) * (2 * phi + sodium * pair[1]);
        }
      }
    }
    return energy;
  }

  /** Natural logarithm of one ion's coefficient: the slope of the energy by its molality. */
  double slope(Map<Ion, Double> molal, Ion ion) {
    double at = molal.getOrDefault(ion, 0.0);
    double step = 1e-4;
    if (at < 2 * step) {
      // An ion that is hardly there: a slope to one side, of second order.
      return (4 * with(molal, ion, at + step) - with(molal, ion, at + 2 * step) - 3 * of(molal))
          / (2 * step);
    }
    return (with(molal, ion, at + step) - with(molal, ion, at - step)) / (2 * step);
  }

  private double with(Map<Ion, Double> molal, Ion ion, double amount) {
    Map<Ion, Double> changed = new EnumMap<>(molal);
    changed.put(ion, amount);
    return of(changed);
  }

  /** Mean coefficient of the only salt in the water. */
  double mean(Ion cation, Ion anion, double molality) {
    int cations = -anion.charge;
    Map<Ion, Double> molal = new EnumMap<>(Map.of(cation, cations * molality, anion, molality));
    double sum = cations * slope(molal, cation) + slope(molal, anion);
    return Math.exp(sum / (cations + 1));
  }

  /** β0, β1 and C^φ. */
  private double[] salt(Ion cation, Ion anion) {
    double dt = celsius - 25;
    if (cation == Ion.POTASSIUM) {
      return new double[] {
        0.04835 + 5.794e-4 * dt, 0.2122 + 10.71e-4 * dt, -0.00084 - 5.095e-5 * dt
      };
    }
    return switch (anion) {
      case HYDROXIDE ->
          new double[] {0.0864 + 7.00e-4 * dt, 0.253 + 1.34e-4 * dt, 0.0044 - 18.94e-5 * dt};
      case BICARBONATE -> new double[] {0.0277 + 1.00e-3 * dt, 0.0411 + 1.10e-3 * dt, 0};
      case CARBONATE -> new double[] {0.0399 + 1.79e-3 * dt, 1.389 + 2.05e-3 * dt, 0.0044};
      case SULPHATE ->
          new double[] {0.01958 + 2.367e-3 * dt, 1.113 + 5.6325e-3 * dt, 0.00497 - 4.87904e-4 * dt};
      default ->
          new double[] {
            overTemperature(0.0765, -777.03, -4.4706, 0.008946, -3.3158e-6),
            overTemperature(0.2664, 0, 0, 6.1608e-5, 1.0715e-6),
            overTemperature(0.00127, 33.317, 0.09421, -4.655e-5, 0)
          };
    };
  }

  private double overTemperature(double at25, double a, double b, double c, double d) {
    double t = celsius + 273.15;
    double r = 298.15;
    return at25 + a * (1 / t - 1 / r) + b * Math.log(t / r) + c * (t - r) + d * (t * t - r * r);
  }

  /** θ of two anions and ψ of them with sodium. */
  private static double[] pair(Ion one, Ion other) {
    return switch (one.name() + " " + other.name()) {
      case "HYDROXIDE CARBONATE" -> new double[] {0.10, -0.017};
      case "HYDROXIDE CHLORIDE" -> new double[] {-0.050, -0.006};
      case "BICARBONATE CARBONATE" -> new double[] {-0.04, 0.002};
      case "BICARBONATE CHLORIDE" -> new double[] {0.03, -0.015};
      case "CARBONATE CHLORIDE" -> new double[] {-0.02, 0.0085};
      case "HYDROXIDE SULPHATE" -> new double[] {-0.013, -0.009};
      case "BICARBONATE SULPHATE" -> new double[] {0.01, -0.005};
      case "CARBONATE SULPHATE" -> new double[] {0.02, -0.005};
      case "CHLORIDE SULPHATE" -> new double[] {0.02, 0.0014};
      default -> new double[] {0, 0};
    };
  }

  private double unlike(int one, int other, double strength) {
    if (one == other) {
      return 0;
    }
    double unit = 6 * debye * Math.sqrt(strength);
    double own = j(one * one * unit) / 2 + j(other * other * unit) / 2;
    return one * other / (4 * strength) * (j(one * other * unit) - own);
  }

  /** J(x) = x/4 − 1 + 1/x ∫ (1 − exp(−x/y · e^−y)) y² dy, by Simpson's rule. */
  private static double j(double x) {
    int steps = 4000;
    double width = 40.0 / steps;
    double sum = 0;
    for (int i = 1; i < steps; i++) {
      double y = i * width;
      sum += (i % 2 == 1 ? 4 : 2) * (1 - Math.exp(-x / y * Math.exp(-y))) * y * y;
    }
    return x / 4 - 1 + sum * width / 3 / x;
  }
}
