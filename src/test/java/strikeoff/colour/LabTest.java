package strikeoff.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.plan.Colour;

/** CIELAB as CIE 15 defines it: a cube root, and a straight line near black. */
class LabTest {

  /**
   * CIE 15: L* = 903.3 · Y for Y up to 0.008856. The share of light of a grey of n steps of 255 is
   * n / 255 / 12.92 up to ten steps (IEC 61966-2-1): 1 → 0.000303527, 10 → 0.00303527.
   */
  @ParameterizedTest
  @CsvSource({"0, 0", "1, 0.27418", "5, 1.37088", "10, 2.74176"})
  void nearBlackLightnessIsALineAndGreysHaveNoHue(int steps, double lightness) {
    Lab grey = Lab.of(new Colour(steps, steps, steps, "grey"));
    assertThat(grey.lightness()).isCloseTo(lightness, within(1e-4));
    assertThat(grey.a()).isCloseTo(0, within(1e-9));
    assertThat(grey.b()).isCloseTo(0, within(1e-9));
  }

  /** CIE 15: both parts meet at Y = (6/29)³ = 0.008856, where L* is 8. */
  @Test
  void theLineMeetsTheCurve() {
    double bend = Math.pow(6.0 / 29, 3);
    for (double y : new double[] {bend - 1e-9, bend, bend + 1e-9}) {
      Xyz white = Xyz.WHITE;
      Lab lab = Lab.of(new Xyz(y * white.x(), y * white.y(), y * white.z()), white);
      assertThat(lab.lightness()).isCloseTo(8, within(1e-5));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1, 0, 0, 1",
    "0, 2, 90, 2",
    "-3, 0, 180, 3",
    "0, -4, 270, 4",
    "3, 4, 53.1301, 5",
    "3, -4, 306.8699, 5",
    "0, 0, 0, 0"
  })
  void hueGoesRoundFromRedByYellowGreenAndBlue(double a, double b, double hue, double chroma) {
    Lab lab = new Lab(50, a, b);
    assertThat(lab.hueDegrees()).isCloseTo(hue, within(1e-4));
    assertThat(lab.chroma()).isCloseTo(chroma, within(1e-12));
  }
}
