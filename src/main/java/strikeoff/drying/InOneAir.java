package strikeoff.drying;

/** Drying of one film on one day in air that stays as it is. Times in hours from its beginning. */
final class InOneAir {

  /** Hours; a tenth of a second. */
  private static final double CLOSE = 0.1 / 3600;

  private static final int MOST_STEPS = 60;

  private InOneAir() {}

  /** When it is in each state. */
  static Times.Hours hours(FilmNeed need, int day, double rate) {
    double safe = frameSafe(need, day, rate);
    return new Times.Hours(
        safe,
        liftSafe(need, day, rate, safe),
        evaporated(need.amounts().dryThrough()[day], need.skin(day), rate, safe));
  }

  /** When a frame may be laid on it; infinite if never. */
  static double frameSafe(FilmNeed need, int day, double rate) {
    return frameSafe(need, day, rate, 0, 0);
  }

  /**
   * The same for a film that has lain for some time in other air, and was not safe by then.
   *
   * @param hours for which it has lain
   * @param evaporated what has gone into the air till then, g/m²
   */
  static double frameSafe(FilmNeed need, int day, double rate, double hours, double evaporated) {
    return need.timed().isPresent()
        ? Math.max(need.timed().get()[day], hours)
        : sunkIn(need, day, rate, hours, evaporated);
  }

  /**
   * True if it surely is not safe by {@code end}: told at one look, where the time itself takes
   * several steps. False says nothing.
   */
  static boolean isWetAfter(
      FilmNeed need, int day, double rate, double hours, double evaporated, double end) {
    if (rate < 0 || end == Double.POSITIVE_INFINITY || need.timed().isPresent()) {
      return false; // at a rate below nothing it may grow wetter after it was safe
    }
    double then = end + CLOSE;
    double gone = evaporated + rate * (then - hours);
    return need.aboveInTheEnd(day, gone) > 0 || need.above(day, then, gone) > 0;
  }

  private static double sunkIn(
      FilmNeed need, int day, double rate, double hours, double evaporated) {
    if (need.above(day, hours, evaporated) <= 0) {
      return hours;
    }
    if (rate <= 0 && need.aboveInTheEnd(day, evaporated) >= 0) {
      return Double.POSITIVE_INFINITY;
    }
    // What is left falls ever more slowly, so that Newton's steps come up to the time from below.
    double at = hours;
    for (int step = 0; step < MOST_STEPS; step++) {
      double above = need.above(day, at, evaporated + rate * (at - hours));
      double further = above / need.falling(day, at, rate);
      at += further;
      if (further < CLOSE) {
        break;
      }
    }
    return at;
  }

  /** When the cloth may move: never before it is frame-safe; infinite if never. */
  static double liftSafe(FilmNeed need, int day, double rate, double frameSafe) {
    return evaporated(need.amounts().lift()[day], need.skin(day), rate, frameSafe);
  }

  /** When so much has evaporated, at the full rate until it is frame-safe, then through a skin. */
  static double evaporated(double wanted, double skin, double rate, double frameSafe) {
    double left = wanted - rate * frameSafe;
    return left <= 0 || Double.isInfinite(frameSafe)
        ? frameSafe
        : rate <= 0 ? Double.POSITIVE_INFINITY : frameSafe + left / (rate * skin);
  }
}
