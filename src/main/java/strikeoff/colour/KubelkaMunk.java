package strikeoff.colour;

/**
 * Kubelka–Munk's single-constant relation between the reflectance of a thick coloured layer and
 * K/S, the ratio of its absorption to its scattering. On cloth the fibres scatter and the dye
 * absorbs, so the K/S of dyes that share a cloth add up (P. Kubelka and F. Munk, 1931; the usual
 * form in textile colour matching).
 */
public final class KubelkaMunk {

  /**
   * A quarter of sRGB's lowest step stands for an empty band, which would otherwise absorb without
   * end; an 8-bit colour cannot tell the two.
   */
  static final double DARKEST = 0.25 / 255 / 12.92;

  private KubelkaMunk() {}

  /**
   * K/S of a reflectance.
   *
   * @param reflectance above 0, at most 1
   * @throws IllegalArgumentException outside that
   */
  public static double absorption(double reflectance) {
    if (!(reflectance > 0 && reflectance <= 1)) {
      throw new IllegalArgumentException("no K/S of reflectance " + reflectance);
    }
    return (1 - reflectance) * (1 - reflectance) / (2 * reflectance);
  }

  /**
   * The reflectance of a K/S, in the form that loses no digits where K/S is large.
   *
   * @param absorption zero or more
   * @throws IllegalArgumentException if it is negative
   */
  public static double reflectance(double absorption) {
    if (!(absorption >= 0)) {
      throw new IllegalArgumentException("no reflectance of K/S " + absorption);
    }
    return 1 / (1 + absorption + Math.sqrt(absorption * (absorption + 2)));
  }

  /** K/S of a band of a named colour, finite for an empty band too. */
  static double absorptionOfBand(double band) {
    return absorption(band == 0 ? DARKEST : band);
  }
}
