package strikeoff.drying;

import java.util.Optional;

/**
 * What a film must lose before it may be touched, lifted or fixed, and how much faster or slower
 * than the model says it was seen to.
 */
public final class FilmNeed {

  private final Amounts amounts;
  private final double pace;
  private final double afterwards;
  private final Optional<double[]> timed;

  FilmNeed(Amounts amounts) {
    this(amounts, 1, 1, Optional.empty());
  }

  private FilmNeed(Amounts amounts, double pace, double afterwards, Optional<double[]> timed) {
    this.amounts = amounts;
    this.pace = pace;
    this.afterwards = afterwards;
    this.timed = timed;
  }

  /**
   * What is on the cloth on each of the {@link Days} and what may stay there, g/m², index by day.
   *
   * <p>Water on the cloth at some time is what was laid down, less what the yarns have soaked up,
   * which comes near its end as 1 − e^(−t/τ), less what has evaporated.
   *
   * @param activity vapour pressure over the film, as a share of that over pure water
   * @param water laid down with the paste
   * @param soaked what the yarns soak up in the end
   * @param soakHours the time τ in which they do
   * @param touchDry what may be left on the cloth when a frame is laid on it
   * @param lift what must evaporate until the cloth may move
   * @param dryThrough what must evaporate until it may be put in a bath or heated
   * @param skin share of the full rate at which a film dries on once it is touch-dry
   */
  record Amounts(
      Days days,
      double activity,
      double[] water,
      double[] soaked,
      double[] soakHours,
      double[] touchDry,
      double[] lift,
      double[] dryThrough,
      double[] skin) {}

  /** The same film, drying so much faster until a frame may be laid on it and after. */
  FilmNeed at(double times) {
    return new FilmNeed(amounts, pace * times, afterwards, timed);
  }

  /** The same film, drying on so much faster once a frame may be laid on it. */
  FilmNeed afterwardsAt(double times) {
    return new FilmNeed(amounts, pace, afterwards * times, timed);
  }

  /** The same film, of which the model says nothing that would agree with the time it took. */
  FilmNeed frameSafeAt(double[] hours) {
    return new FilmNeed(amounts, pace, afterwards, Optional.of(hours));
  }

  Amounts amounts() {
    return amounts;
  }

  /** How much faster than the model says water leaves it; 1 unless a strike-off was timed. */
  double pace() {
    return pace;
  }

  /** Share of the full rate at which it dries on once a frame may be laid on it. */
  double skin(int day) {
    return amounts.skin[day] * afterwards;
  }

  /** Hours till a frame may be laid on it, by day, where they were taken and not modelled. */
  Optional<double[]> timed() {
    return timed;
  }

  /** Water on the cloth above what a frame may touch. */
  double above(int day, double hours, double evaporated) {
    return amounts.water[day]
        - amounts.soaked[day] * (1 - Math.exp(-hours / soakHours(day)))
        - evaporated
        - amounts.touchDry[day];
  }

  /** The same after it has soaked in for ever. */
  double aboveInTheEnd(int day, double evaporated) {
    return amounts.water[day] - amounts.soaked[day] - evaporated - amounts.touchDry[day];
  }

  /** How fast {@link #above} falls with time, g/(m² h), at a rate of evaporation. */
  double falling(int day, double hours, double rate) {
    double soakHours = soakHours(day);
    return amounts.soaked[day] / soakHours * Math.exp(-hours / soakHours) + rate;
  }

  private double soakHours(int day) {
    return amounts.soakHours[day] / pace;
  }
}
