package strikeoff.colour;

import strikeoff.plan.Colour;

/**
 * Chromatic adaptation from D65 to D50 by the linear Bradford transform, with the matrix of CSS
 * Color 4: only to reach published values that are given under D50.
 */
final class Bradford {

  private static final double[][] TO_D50 = {
    {1.0479297925449969, 0.022946870601609652, -0.05019226628920524},
    {0.02962780877005599, 0.9904344267538799, -0.017073799063418826},
    {-0.009243040646204504, 0.015055191490298152, 0.7518742814281371},
  };

  private static final Xyz D50 = new Xyz(0.3457 / 0.3585, 1, (1 - 0.3457 - 0.3585) / 0.3585);

  private Bradford() {}

  static Lab labUnderD50(Colour colour) {
    Xyz d65 = Xyz.of(Reflectance.of(colour));
    return Lab.of(new Xyz(row(0, d65), row(1, d65), row(2, d65)), D50);
  }

  private static double row(int row, Xyz xyz) {
    return TO_D50[row][0] * xyz.x() + TO_D50[row][1] * xyz.y() + TO_D50[row][2] * xyz.z();
  }
}
