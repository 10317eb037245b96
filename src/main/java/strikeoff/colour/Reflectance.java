package strikeoff.colour;

import strikeoff.plan.Colour;

/**
 * How much of the light a surface throws back in sRGB's three broad bands, in proportion to white
 * cloth. It is sRGB without its transfer curve, so bands can be added and multiplied as light can.
 *
 * @param red 0 to 1
 * @param green 0 to 1
 * @param blue 0 to 1
 */
public record Reflectance(double red, double green, double blue) {

  /** White cloth, which colours are named on. */
  public static final Reflectance WHITE = new Reflectance(1, 1, 1);

  /**
   * @throws IllegalArgumentException if a band lies outside 0 to 1
   */
  public Reflectance {
    require(red);
    require(green);
    require(blue);
  }

  /** Decodes sRGB by the transfer curve of IEC 61966-2-1. */
  public static Reflectance of(Colour colour) {
    return new Reflectance(decoded(colour.red()), decoded(colour.green()), decoded(colour.blue()));
  }

  /** The nearest sRGB colour, written as a hexadecimal triple. */
  public Colour colour() {
    Colour nearest = new Colour(encoded(red), encoded(green), encoded(blue), "");
    return new Colour(nearest.red(), nearest.green(), nearest.blue(), nearest.hex());
  }

  /** This surface hidden by that share of another one laid over it. */
  public Reflectance hiddenBy(Reflectance cover, double share) {
    return new Reflectance(
        mixed(red, cover.red, share),
        mixed(green, cover.green, share),
        mixed(blue, cover.blue, share));
  }

  private static double mixed(double under, double cover, double share) {
    return (1 - share) * under + share * cover;
  }

  private static double decoded(int level) {
    double v = level / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  private static int encoded(double band) {
    double v = band <= 0.0031308 ? 12.92 * band : 1.055 * Math.pow(band, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * v);
  }

  private static void require(double band) {
    if (!(band >= 0 && band <= 1)) {
      throw new IllegalArgumentException("not a reflectance: " + band);
    }
  }
}
