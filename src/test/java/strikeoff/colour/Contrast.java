package strikeoff.colour;

import strikeoff.plan.Colour;

/**
 * Contrast of two colours as the Web Content Accessibility Guidelines 2.x reckon it: what is
 * published of it checks how light a colour is taken to be.
 */
final class Contrast {

  private Contrast() {}

  /** From 1 for colours of equal luminance to 21 for black on white; the same both ways round. */
  static double between(Colour one, Colour two) {
    double p = luminance(one);
    double q = luminance(two);
    return (Math.max(p, q) + 0.05) / (Math.min(p, q) + 0.05);
  }

  /** With WCAG's own rounded weights, which differ from the matrix in the fourth digit. */
  private static double luminance(Colour colour) {
    Reflectance light = Reflectance.of(colour);
    return 0.2126 * light.red() + 0.7152 * light.green() + 0.0722 * light.blue();
  }
}
