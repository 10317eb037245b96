package strikeoff.drying;

import java.util.Random;

/**
 * A hundred and one days on which the same plan might be printed, equally likely. They are the same
 * ones at every run and on every machine, and all films of a plan share them: on a damp day
 * everything dries slowly.
 *
 * <p>Each unknown takes its 101 values from the middles of equally likely classes of the normal
 * distribution, shuffled against the others (a Latin hypercube: McKay, Beckman and Conover,
 * Technometrics 21, 1979). So its median and spread are exact, and a point of a drying time is one
 * of the days, not a figure between two.
 */
final class Days {

  static final int COUNT = Drying.DAYS;

  /** The days as they are before anybody has printed a strike-off. */
  static final Days ANY = drawn();

  private final double[][] deviates;

  private Days(double[][] deviates) {
    this.deviates = deviates;
  }

  /** By how many spreads an unknown differs on that day. */
  double deviate(Unknown unknown, int day) {
    return deviates[unknown.ordinal()][day];
  }

  /**
   * The same days after something of them was measured: an ensemble smoother with multiple data
   * assimilation (Emerick and Reynolds, Computers and Geosciences 55, 2013), which moves each
   * unknown by what its covariance with the measured figure tells. It keeps all days, where weights
   * would leave a handful of those that fit a figure far from the expected one.
   *
   * @param modelled natural logarithm of the measured figure as it would have been on each of the
   *     days, by the unknowns given
   * @param measured natural logarithm of the figure
   * @param spread of the measurement, as a share of the figure
   */
  Days after(Modelled modelled, double measured, double spread) {
    return after(modelled, measured, spread, ROUNDS);
  }

  /** The same, told in so many parts. */
  Days after(Modelled modelled, double measured, double spread, int rounds) {
    Days days = this;
    double wide = spread * Math.sqrt(rounds); // each part counts for so much less
    for (int round = 0; round < rounds; round++) {
      double[] was = modelled.logarithms(days);
      double mean = mean(was);
      double variance = wide * wide;
      for (double one : was) {
        variance += (one - mean) * (one - mean) / (COUNT - 1);
      }
      double[][] moved = new double[deviates.length][];
      for (Unknown unknown : Unknown.values()) {
        double[] old = days.deviates[unknown.ordinal()];
        moved[unknown.ordinal()] = unknown.lasting() ? old.clone() : old;
        if (!unknown.lasting()) {
          continue;
        }
        double middle = mean(old);
        double covariance = 0;
        for (int day = 0; day < COUNT; day++) {
          covariance += (old[day] - middle) * (was[day] - mean) / (COUNT - 1);
        }
        for (int day = 0; day < COUNT; day++) {
          // other noise in each round: the column, turned on
          double noise =
              deviates[Unknown.SEEN.ordinal()][(day + round * COUNT / rounds) % COUNT] * wide;
          moved[unknown.ordinal()][day] += covariance / variance * (measured + noise - was[day]);
        }
      }
      days = new Days(moved);
    }
    return days;
  }

  /**
   * The model bends, so that a figure far from the expected one is approached in parts. With more
   * of them the days change by less than what a watch and a finger miss.
   */
  private static final int ROUNDS = 4;

  /** What would have been measured on each of the days, as natural logarithms. */
  interface Modelled {
    double[] logarithms(Days days);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static Days drawn() {
    double[] middles = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      middles[i] = normal((i + 0.5) / COUNT);
    }
    Random shuffling = new Random(COUNT);
    double[][] deviates = new double[Unknown.values().length][];
    for (int unknown = 0; unknown < deviates.length; unknown++) {
      double[] shuffled = middles.clone();
      for (int i = COUNT - 1; i > 0; i--) {
        int other = shuffling.nextInt(i + 1);
        double held = shuffled[i];
        shuffled[i] = shuffled[other];
        shuffled[other] = held;
      }
      deviates[unknown] = shuffled;
    }
    return new Days(deviates);
  }

  /** The share of a normal distribution below a deviate, for those that were drawn. */
  static double below(double deviate) {
    // Abramowitz and Stegun 26.2.17, within 7.5·10⁻⁸
    double t = 1 / (1 + 0.2316419 * Math.abs(deviate));
    double tail =
        Math.exp(-deviate * deviate / 2)
            / Math.sqrt(2 * Math.PI)
            * t
            * (0.319381530
                + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
    return deviate >= 0 ? 1 - tail : tail;
  }

  /**
   * The deviate below which a share of a normal distribution lies: Abramowitz and Stegun, Handbook
   * of Mathematical Functions, formula 26.2.23, within 4.5·10⁻⁴.
   */
  static double normal(double share) {
    double tail = Math.min(share, 1 - share);
    double t = Math.sqrt(-2 * Math.log(tail));
    double above =
        t
            - (2.515517 + t * (0.802853 + t * 0.010328))
                / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
    return share < 0.5 ? -above : share > 0.5 ? above : 0;
  }
}
