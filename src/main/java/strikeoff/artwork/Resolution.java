package strikeoff.artwork;

/** Which resolutions a film can have. */
public final class Resolution {

  /** Films are 3 to 100 points a millimetre; beyond that a figure was meant otherwise. */
  private static final double FEWEST_PER_MM = 0.1;

  private static final double MOST_PER_MM = 400;

  private Resolution() {}

  /** False for what no film has. */
  public static boolean canBe(double perMm) {
    return perMm >= FEWEST_PER_MM && perMm <= MOST_PER_MM;
  }
}
