package strikeoff.artwork;

/** Which resolutions a film can have. */
public final class Resolution {

  /**
   * Films are 3 to 200 points a millimetre, which imagesetters have at most (5080 an inch: common
   * practice); far beyond that a figure was meant otherwise.
   */
  private static final double FEWEST_PER_MM = 0.1;

  static final double MOST_PER_MM = 400;

  private Resolution() {}

  /** False for so few that programs write them where they know nothing. */
  static boolean isSaid(double perMm) {
    return perMm >= FEWEST_PER_MM;
  }

  /** False for what no film has. */
  public static boolean canBe(double perMm) {
    return perMm >= FEWEST_PER_MM && perMm <= MOST_PER_MM;
  }
}
