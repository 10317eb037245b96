package strikeoff.colour;

import strikeoff.plan.Colour;

/**
 * A colour in CIELAB 1976 under D65 (ISO/CIE 11664-4): lightness, and two axes of hue.
 *
 * @param lightness L*, 0 for black to 100 for white
 * @param a green (negative) to red
 * @param b blue (negative) to yellow
 */
public record Lab(double lightness, double a, double b) {

  private static final double BEND = 216.0 / 24389;
  private static final double SLOPE = 24389.0 / 27;

  public static Lab of(Colour colour) {
    return of(Reflectance.of(colour));
  }

  public static Lab of(Reflectance bands) {
    return of(Xyz.of(bands), Xyz.WHITE);
  }

  static Lab of(Xyz xyz, Xyz white) {
    double fx = f(xyz.x() / white.x());
    double fy = f(xyz.y() / white.y());
    double fz = f(xyz.z() / white.z());
    return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
  }

  /** Distance from grey. */
  public double chroma() {
    return Math.hypot(a, b);
  }

  /** Hue in degrees from the red axis, 0 to 360; 0 for grey. */
  public double hueDegrees() {
    if (a == 0 && b == 0) {
      return 0;
    }
    double degrees = Math.toDegrees(Math.atan2(b, a));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  /** CIELAB difference of 1976, the one of the grey scales of ISO 105-A02 and A03. */
  public double distance(Lab other) {
    return Math.hypot(Math.hypot(lightness - other.lightness, a - other.a), b - other.b);
  }

  /** CIEDE2000 difference; 1 is about what a trained eye just sees side by side. */
  public double difference(Lab other) {
    return Ciede2000.between(this, other);
  }

  private static double f(double t) {
    return t > BEND ? Math.cbrt(t) : (SLOPE * t + 16) / 116;
  }
}
