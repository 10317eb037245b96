package strikeoff.colour;

/**
 * The CIEDE2000 colour difference (ISO/CIE 11664-6) with all parametric factors 1.
 *
 * <p>Written after the formula in G. Sharma, W. Wu and E. N. Dalal, "The CIEDE2000 color-difference
 * formula: implementation notes, supplementary test data, and mathematical observations", Color
 * Research &amp; Application 30 (2005) 21–30, whose test data it meets. It was fitted to small
 * differences, up to about 5; for greater ones it says only that colours are far apart.
 */
final class Ciede2000 {

  private static final double POW25_7 = Math.pow(25, 7);

  private Ciede2000() {}

  static double between(Lab one, Lab two) {
    double meanChroma = (one.chroma() + two.chroma()) / 2;
    double stretch = 1 + 0.5 * (1 - saturation(meanChroma));
    Lab p = new Lab(one.lightness(), stretch * one.a(), one.b());
    Lab q = new Lab(two.lightness(), stretch * two.a(), two.b());

    double chromaProduct = p.chroma() * q.chroma();
    double deltaL = q.lightness() - p.lightness();
    double deltaC = q.chroma() - p.chroma();
    double turn = chromaProduct == 0 ? 0 : shortestTurn(q.hueDegrees() - p.hueDegrees());
    double deltaH = 2 * Math.sqrt(chromaProduct) * sin(turn / 2);

    double l = (p.lightness() + q.lightness()) / 2;
    double c = (p.chroma() + q.chroma()) / 2;
    double h = chromaProduct == 0 ? p.hueDegrees() + q.hueDegrees() : meanHue(p, q);

    double t =
        1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.20 * cos(4 * h - 63);
    double fromMiddle = (l - 50) * (l - 50);
    double weightL = 1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle);
    double weightC = 1 + 0.045 * c;
    double weightH = 1 + 0.015 * c * t;
    double blueTurn = 30 * Math.exp(-square((h - 275) / 25));
    double rotation = -2 * saturation(c) * sin(2 * blueTurn);

    double partL = deltaL / weightL;
    double partC = deltaC / weightC;
    double partH = deltaH / weightH;
    double sum = partL * partL + partC * partC + partH * partH + rotation * partC * partH;
    return Math.sqrt(Math.max(0, sum));
  }

  private static double saturation(double chroma) {
    double c7 = Math.pow(chroma, 7);
    return Math.sqrt(c7 / (c7 + POW25_7));
  }

  private static double shortestTurn(double degrees) {
    return degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;
  }

  private static double meanHue(Lab p, Lab q) {
    double sum = p.hueDegrees() + q.hueDegrees();
    if (Math.abs(p.hueDegrees() - q.hueDegrees()) <= 180) {
      return sum / 2;
    }
    return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  }

  private static double square(double x) {
    return x * x;
  }

  private static double sin(double degrees) {
    return Math.sin(Math.toRadians(degrees));
  }

  private static double cos(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }
}
