package strikeoff.chemistry;

import static strikeoff.chemistry.Temperatures.kelvin;

import strikeoff.units.Range;

/**
 * How much faster a reaction runs at another temperature. The activation energy of a dye's reaction
 * is known within a range only, so the answer is a range too.
 */
public final class Arrhenius {

  /** Gas constant in J/(mol K), CODATA 2018, exact. */
  private static final double R = 8.314462618;

  private Arrhenius() {}

  /**
   * Rate at {@code to} as a multiple of the rate at {@code from}.
   *
   * @param kiloJoules activation energy in kJ/mol
   */
  public static double factor(double kiloJoules, double from, double to) {
    return Math.exp(kiloJoules * 1000 / R * (1 / kelvin(from) - 1 / kelvin(to)));
  }

  /** The same over a range of activation energies. */
  public static Range factor(Range kiloJoules, double from, double to) {
    double atLow = factor(kiloJoules.low(), from, to);
    double atHigh = factor(kiloJoules.high(), from, to);
    double atBest = factor(kiloJoules.best(), from, to);
    return new Range(Math.min(atLow, atHigh), atBest, Math.max(atLow, atHigh));
  }

  /** How long something that takes {@code minutes} at {@code from} takes at {@code to}. */
  public static Range minutes(double minutes, Range kiloJoules, double from, double to) {
    Range faster = factor(kiloJoules, from, to);
    return new Range(minutes / faster.high(), minutes / faster.best(), minutes / faster.low());
  }
}
