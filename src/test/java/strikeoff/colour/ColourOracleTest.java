package strikeoff.colour;

import com.github.ajalt.colormath.calculate.ContrastKt;
import com.github.ajalt.colormath.model.LAB;
import com.github.ajalt.colormath.model.RGB;
import com.github.ajalt.colormath.model.SRGB;
import com.github.ajalt.colormath.model.XYZ;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Oracle;
import strikeoff.plan.Colour;

/**
 * Conversion and contrast against a colour library, which reckons in floats.
 *
 * <p>It isn't asked for CIEDE2000: it gives 2.0445 for pair 29 of Sharma's test data, where the
 * paper says 2.0373. Our differences are held to all 34 pairs of the paper instead.
 */
public class ColourOracleTest {

  private static final String LIBRARY = "colormath 3.6.1 (colour)";
  private static final String CUBE = "sRGB cube, steps of 51";

  public static List<Oracle> oracles() {
    return List.of(tristimulus(), lab(), chroma(), hue(), contrast());
  }

  @ParameterizedTest
  @MethodSource("oracles")
  void theLibraryGetsTheSame(Oracle oracle) {
    oracle.assertHolds();
  }

  private static Oracle tristimulus() {
    // Four-digit chromaticities of D65 in both; their matrix is rounded to floats.
    Oracle oracle = Oracle.within(2e-5, LIBRARY, "XYZ", CUBE + ", 3 values each");
    for (Colour colour : cube()) {
      Xyz ours = Xyz.of(Reflectance.of(colour));
      XYZ theirs = rgb(colour).toXYZ();
      oracle.point(colour.hex() + " X", ours.x(), theirs.getX());
      oracle.point(colour.hex() + " Y", ours.y(), theirs.getY());
      oracle.point(colour.hex() + " Z", ours.z(), theirs.getZ());
    }
    return oracle;
  }

  private static Oracle lab() {
    Oracle oracle = Oracle.within(0.01, LIBRARY, "L*a*b*, D65", CUBE + ", 3 values each");
    for (Colour colour : cube()) {
      Lab ours = Lab.of(colour);
      LAB theirs = rgb(colour).toLAB();
      oracle.point(colour.hex() + " L*", ours.lightness(), theirs.getL());
      oracle.point(colour.hex() + " a*", ours.a(), theirs.getA());
      oracle.point(colour.hex() + " b*", ours.b(), theirs.getB());
    }
    return oracle;
  }

  private static Oracle chroma() {
    Oracle oracle = Oracle.within(0.01, LIBRARY, "chroma", CUBE);
    for (Colour colour : cube()) {
      oracle.point(colour.hex(), Lab.of(colour).chroma(), rgb(colour).toLCHab().getC());
    }
    return oracle;
  }

  private static Oracle hue() {
    Oracle oracle = Oracle.within(0.05, LIBRARY, "hue, degrees", CUBE + ", without the greys");
    for (Colour colour : cube()) {
      if (Lab.of(colour).chroma() > 1) {
        double theirs = rgb(colour).toLCHab().getH();
        oracle.point(colour.hex(), Lab.of(colour).hueDegrees(), theirs);
      }
    }
    return oracle;
  }

  private static Oracle contrast() {
    Oracle oracle =
        Oracle.withinShare(1e-4, LIBRARY, "contrast", CUBE + ", each against black and white");
    for (Colour colour : cube()) {
      for (Colour ground : List.of(colour(0, 0, 0), colour(255, 255, 255))) {
        oracle.point(
            colour.hex() + " on " + ground.hex(),
            Contrast.between(colour, ground),
            ContrastKt.wcagContrastRatio(rgb(colour), rgb(ground)));
      }
    }
    return oracle;
  }

  private static RGB rgb(Colour colour) {
    return SRGB.INSTANCE.from255(colour.red(), colour.green(), colour.blue(), 255);
  }

  private static List<Colour> cube() {
    List<Colour> colours = new ArrayList<>();
    for (int r = 0; r <= 255; r += 51) {
      for (int g = 0; g <= 255; g += 51) {
        for (int b = 0; b <= 255; b += 51) {
          colours.add(colour(r, g, b));
        }
      }
    }
    return colours;
  }

  private static Colour colour(int red, int green, int blue) {
    return new Colour(red, green, blue, "");
  }
}
