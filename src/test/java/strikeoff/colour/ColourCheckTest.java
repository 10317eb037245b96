package strikeoff.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.CheckRow;
import strikeoff.checks.CheckRow.Status;
import strikeoff.plan.Colour;

/** Colour conversion, differences, contrast and Kubelka–Munk against values from outside. */
public class ColourCheckTest {

  private static final String CSS = "W3C CSS Color 4, sample matrices and tests";
  private static final String WCAG = "WCAG 2.x contrast ratio, public contrast test values";
  private static final String KM = "Kubelka & Munk 1931, (1 − R)² / 2R";
  private static final String INSTRUMENT = "instrument maker's application note on K/S, 2008";
  private static final Colour WHITE = colour(0xffffff);

  @ParameterizedTest
  @MethodSource("checks")
  void meetsTheValueFromOutside(Check check) {
    check.assertHolds();
  }

  public static List<Check> checks() {
    List<Check> checks = new ArrayList<>(SharmaPairs.checks());
    xyz(checks);
    lab(checks);
    labUnderD50(checks);
    lindbloom(checks);
    contrast(checks);
    kubelkaMunk(checks);
    areas(checks);
    return checks;
  }

  private static void xyz(List<Check> checks) {
    Xyz white = Xyz.of(Reflectance.of(WHITE));
    triple(checks, "XYZ of white", "CSS Color 4 matrix", 1e-6, CSS, Status.PUBLISHED)
        .of(white.x(), 0.950456, white.y(), 1.0, white.z(), 1.089058);
    triple(checks, "XYZ of white", "four-digit matrix", 1e-4, "IEC 61966-2-1", Status.COMPUTED)
        .of(white.x(), 0.9505, white.y(), 1.0, white.z(), 1.0890);
    Xyz red = Xyz.of(Reflectance.of(colour(0xff0000)));
    triple(checks, "XYZ of red", "CSS Color 4 matrix", 5e-6, CSS, Status.COMPUTED)
        .of(red.x(), 0.41239, red.y(), 0.21264, red.z(), 0.01933);
    Reflectance grey = Reflectance.of(colour(0x808080));
    one(checks, "Y", "#808080", 0.21586, 1e-5, CSS, Status.COMPUTED, () -> Xyz.of(grey).y());
  }

  private static void lab(List<Check> checks) {
    lab(checks, "#ff0000", 0xff0000, 53.2371, 80.0901, 67.2033);
    lab(checks, "#00ff00", 0x00ff00, 87.7355, -86.1816, 83.1866);
    lab(checks, "#0000ff", 0x0000ff, 32.3009, 79.1953, -107.8555);
    one(
        checks,
        "L*",
        "#808080, D65",
        53.585,
        1e-3,
        CSS,
        Status.COMPUTED,
        () -> Lab.of(colour(0x808080)).lightness());
  }

  /** A calculator that others hold theirs to, told to four decimals. */
  private static void lindbloom(List<Check> checks) {
    double[][] bars = {
      {0xffff00, 97.1393}, {0x00ffff, 91.1132}, {0x00ff00, 87.7347},
      {0xff00ff, 60.3242}, {0xff0000, 53.2408}, {0x0000ff, 32.2970}
    };
    for (double[] bar : bars) {
      one(
          checks,
          "L*",
          "#%06x, D65".formatted((int) bar[0]),
          bar[1],
          0.01,
          "Lindbloom's calculator, as tests of scikit-image quote it",
          Status.PUBLISHED,
          () -> Lab.of(colour((int) bar[0])).lightness());
    }
  }

  private static void lab(
      List<Check> checks, String name, int rgb, double lightness, double a, double b) {
    Lab lab = Lab.of(colour(rgb));
    triple(checks, "L*a*b* of " + name, "D65", 5e-3, CSS, Status.COMPUTED)
        .of(lab.lightness(), lightness, lab.a(), a, lab.b(), b);
  }

  /**
   * CSS names its lab() under D50; the values reach it by the Bradford transform of CSS Color 4.
   */
  private static void labUnderD50(List<Check> checks) {
    Lab red = Bradford.labUnderD50(colour(0xff0000));
    triple(checks, "L*a*b* of #ff0000", "D50, Bradford", 5e-3, CSS, Status.COMPUTED)
        .of(red.lightness(), 54.2905, red.a(), 80.8049, red.b(), 69.8910);
    Lab lime = Bradford.labUnderD50(colour(0x00ff00));
    triple(checks, "L*a*b* of #00ff00", "D50, Bradford", 5e-3, CSS, Status.COMPUTED)
        .of(lime.lightness(), 87.8185, lime.a(), -79.2711, lime.b(), 80.9946);
    Lab blue = Bradford.labUnderD50(colour(0x0000ff));
    triple(checks, "L*a*b* of #0000ff", "D50, Bradford", 5e-3, CSS, Status.COMPUTED)
        .of(blue.lightness(), 29.5683, blue.a(), 68.2874, blue.b(), -112.0297);
    Lab green = Bradford.labUnderD50(colour(0x008000));
    triple(checks, "CSS lab() of green", "D50", 0.02, CSS, Status.PUBLISHED)
        .of(green.lightness(), 46.2775, green.a(), -47.5621, green.b(), 48.5837);
    triple(checks, "CSS lch() of green", "D50", 0.02, CSS, Status.PUBLISHED)
        .of(green.lightness(), 46.2775, green.chroma(), 67.9892, green.hueDegrees(), 134.3912);
  }

  private static void contrast(List<Check> checks) {
    contrast(checks, 0x000000, 21, 1e-9, Status.PUBLISHED);
    contrast(checks, 0xffffee, 1.01007, 1e-4, Status.PUBLISHED);
    contrast(checks, 0xafbaae, 2.008125, 1e-4, Status.PUBLISHED);
    contrast(checks, 0x8b9986, 3.000644, 1e-4, Status.PUBLISHED);
    contrast(checks, 0x776655, 5.502984, 1e-4, Status.PUBLISHED);
    contrast(checks, 0x777777, 4.47809, 1e-4, Status.COMPUTED);
    contrast(checks, 0x767676, 4.54222, 1e-4, Status.COMPUTED);
    contrast(checks, 0xff0000, 3.99848, 1e-4, Status.COMPUTED);
    contrast(checks, 0x0000ff, 8.59247, 1e-4, Status.COMPUTED);
  }

  private static void contrast(
      List<Check> checks, int rgb, double value, double tolerance, Status status) {
    Colour colour = colour(rgb);
    one(
        checks,
        "contrast",
        colour.hex() + " on white",
        value,
        tolerance,
        WCAG,
        status,
        () -> Contrast.between(colour, WHITE));
  }

  private static void kubelkaMunk(List<Check> checks) {
    one(
        checks,
        "K/S",
        "R = 0.55",
        0.184,
        1e-3,
        INSTRUMENT,
        Status.PUBLISHED,
        () -> KubelkaMunk.absorption(0.55));
    double[][] absorptions = {
      {0.05, 9.025}, {0.10, 4.05}, {0.20, 1.6}, {0.25, 1.125}, {0.50, 0.25}, {0.80, 0.025}
    };
    for (double[] row : absorptions) {
      one(
          checks,
          "K/S",
          "R = " + row[0],
          row[1],
          1e-9,
          KM,
          Status.COMPUTED,
          () -> KubelkaMunk.absorption(row[0]));
    }
    for (double[] row : new double[][] {{4.05, 0.1}, {0.25, 0.5}}) {
      one(
          checks,
          "R",
          "K/S = " + row[0],
          row[1],
          1e-12,
          KM,
          Status.COMPUTED,
          () -> KubelkaMunk.reflectance(row[0]));
    }
    one(
        checks,
        "R of a mix",
        "half of R 0.1 with half of R 0.6",
        0.166192,
        1e-6,
        "additivity of K/S",
        Status.COMPUTED,
        ColourCheckTest::halfAndHalf);
  }

  private static void areas(List<Check> checks) {
    String book = "Westland & Ripamonti, Computational Colour Science, eq. 9.7";
    String[] two = {"bare", "cyan", "yellow", "cyan and yellow"};
    double[] wantedOfTwo = {0.36, 0.24, 0.24, 0.16};
    for (int i = 0; i < two.length; i++) {
      int area = i;
      one(
          checks,
          "Demichel's share",
          "cyan 0.4, yellow 0.4: " + two[i],
          wantedOfTwo[i],
          1e-12,
          book,
          Status.PUBLISHED,
          () -> Neugebauer.demichel(0.4, 0.4)[area]);
    }
    String[] three = {"bare", "c", "m", "c and m", "y", "c and y", "m and y", "c, m and y"};
    double[] wantedOfThree = {0.28, 0.28, 0.12, 0.12, 0.07, 0.07, 0.03, 0.03};
    for (int i = 0; i < three.length; i++) {
      int area = i;
      one(
          checks,
          "Demichel's share",
          "c 0.5, m 0.3, y 0.2: " + three[i],
          wantedOfThree[i],
          1e-12,
          book,
          Status.COMPUTED,
          () -> Neugebauer.demichel(0.5, 0.3, 0.2)[area]);
    }
    double[] shares = {0.5, 0.5};
    double[] reflectances = {0.85, 0.05};
    one(
        checks,
        "mean R",
        "half R 0.05, half R 0.85, n = 1",
        0.45,
        1e-6,
        "Murray & Davies 1936",
        Status.COMPUTED,
        () -> Neugebauer.mean(1, shares, reflectances));
    one(
        checks,
        "mean R",
        "half R 0.05, half R 0.85, n = 2",
        0.328078,
        1e-6,
        "Yule & Nielsen 1951",
        Status.COMPUTED,
        () -> Neugebauer.mean(2, shares, reflectances));
  }

  private static double halfAndHalf() {
    Coat one = Coat.transparent(new Reflectance(0.1, 0.1, 0.1)).times(0.5);
    Coat two = Coat.transparent(new Reflectance(0.6, 0.6, 0.6)).times(0.5);
    return two.over(one.over(Reflectance.WHITE)).green();
  }

  private static Colour colour(int rgb) {
    return new Colour(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff, "");
  }

  private static void one(
      List<Check> checks,
      String quantity,
      String conditions,
      double value,
      double tolerance,
      String source,
      Status status,
      DoubleSupplier computed) {
    checks.add(
        new Check(new CheckRow(quantity, conditions, value, tolerance, source, status), computed));
  }

  private static Triple triple(
      List<Check> checks,
      String quantity,
      String conditions,
      double tolerance,
      String source,
      Status status) {
    return (x, wantedX, y, wantedY, z, wantedZ) -> {
      String first = conditions + ", first";
      one(checks, quantity, first, wantedX, tolerance, source, status, () -> x);
      String second = conditions + ", second";
      one(checks, quantity, second, wantedY, tolerance, source, status, () -> y);
      String third = conditions + ", third";
      one(checks, quantity, third, wantedZ, tolerance, source, status, () -> z);
    };
  }

  /** Three computed numbers, each followed by what it must be. */
  private interface Triple {
    void of(double x, double wantedX, double y, double wantedY, double z, double wantedZ);
  }
}
