package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.plan.Artwork.Fine;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Artwork.Tone;

/** Lines, gaps, points and specks of figures that anybody can work out, by plain geometry. */
class FineDetailTest {

  private static final double[] ANGLES = {0, 11, 22.5, 33, 45, 56, 67.5, 79, 90};

  private static Fine fine(Drawn drawn, double perInch) throws Exception {
    Picture picture = Drawn.picture(drawn.png());
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    return FineDetail.of(open.bits(), 25.4 / perInch, 25.4 / perInch, false).orElseThrow();
  }

  /** A bar in the middle of a film, a little off the points' grid. */
  private static Drawn bar(double width, double degrees, int place, double perInch) {
    return new Drawn(18, 18, perInch)
        .with(Drawn.bar(9 + 0.013 * place, 9 + 0.007 * place, 13, width, degrees));
  }

  @ParameterizedTest
  @CsvSource({"300, 0.085, 0.010", "600, 0.042, 0.005"})
  void barsAtNineAnglesAreFoundToOnePointAndOnAverageExactly(int perInch, double point, double mean)
      throws Exception {
    List<Double> off = new ArrayList<>();
    for (double width :
        perInch == 300 ? new double[] {0.3, 0.5, 1} : new double[] {0.2, 0.3, 0.5, 1}) {
      for (double degrees : ANGLES) {
        for (int place = 0; place < 5; place++) {
          Fine fine = fine(bar(width, degrees, place, perInch), perInch);
          assertThat(fine.line()).as("%s mm at %s°", width, degrees).isPresent();
          double error = fine.line().get().width().mm() - width;
          assertThat(error).as("%s mm at %s°", width, degrees).isBetween(-point, point);
          off.add(error);
          // Its ends are cut at a slant, and count to neither side.
          assertThat(fine.line().get().over().mm())
              .as("length of %s mm at %s°", width, degrees)
              .isBetween(13 * 0.8, 13 * 1.1);
          assertThat(fine.gap()).isEmpty();
        }
      }
    }
    assertThat(off.stream().mapToDouble(e -> e).average().orElseThrow()).isBetween(-mean, mean);
  }

  /** Stripes of more rows than are held at once, and what runs out to points at their ends. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 90})
  void longStripesAreMeasuredToTheirEnds(double degrees) throws Exception {
    Drawn drawn = new Drawn(130, 130, 600);
    for (int i = 0; i < 3; i++) {
      double at = 35 + 30 * i;
      boolean flat = degrees == 0;
      drawn.with(Drawn.bar(flat ? 65 : at, flat ? at : 65, 120, 0.5, degrees));
    }
    drawn.with(Drawn.wedge(5, 5, 100, 8, degrees == 0 ? 4 : 86));
    Fine fine = fine(drawn, 600);
    assertThat(fine.line().orElseThrow().width().mm()).isCloseTo(0.5, within(0.042));
    assertThat(fine.line().orElseThrow().over().mm()).isCloseTo(360, within(4.0));
    assertThat(fine.tips()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 20, 45, 70, 90})
  void aGapIsAsWideAsWhatIsLeftBetweenTwoFields(double degrees) throws Exception {
    double gap = 0.3;
    double apart = 3 + gap / 2;
    double across = Math.toRadians(degrees + 90);
    Drawn drawn = new Drawn(24, 24, 600);
    for (int side : new int[] {-1, 1}) {
      drawn.with(
          Drawn.bar(
              12.01 + side * apart * Math.cos(across),
              12.02 + side * apart * Math.sin(across),
              10,
              6,
              degrees));
    }
    Finest found = fine(drawn, 600).gap().orElseThrow();
    assertThat(found.width().mm()).isBetween(gap - 0.042, gap + 0.042);
    assertThat(found.over().mm()).isBetween(8.5, 10.8);
    assertThat(found.x().mm()).isBetween(6.0, 18.0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.5, 1})
  void aRingIsAsWideAllRound(double width) throws Exception {
    Drawn drawn =
        new Drawn(24, 24, 600)
            .with((x, y) -> Math.abs(Math.hypot(x - 12.01, y - 12.02) - 8) <= width / 2);
    Finest line = fine(drawn, 600).line().orElseThrow();
    assertThat(line.width().mm()).isBetween(width - 0.042, width + 0.042);
  }

  @ParameterizedTest
  @CsvSource({
    "5, 90", "5, 88", "8, 90", "10, 90", "20, 90", "45, 90", "8, 0", "20, 0", "10, 30", "20, 60",
    "45, 20"
  })
  void aWedgeIsNoLineButAPoint(double angle, double degrees) throws Exception {
    double half = Math.toRadians(degrees);
    Drawn drawn =
        new Drawn(30, 30, 600)
            .with(
                Drawn.wedge(
                    15 - 10 * Math.cos(half), 15 - 10 * Math.sin(half), 20, angle, degrees));
    Fine fine = fine(drawn, 600);
    assertThat(fine.line()).isEmpty();
    assertThat(fine.tips()).isEqualTo(1);
    // From the tip to where it is 1 mm wide.
    double length = 0.5 / Math.tan(Math.toRadians(angle / 2));
    assertThat(fine.tipLength()).isBetween(length * 0.85, length * 1.15);
  }

  @Test
  void discsAndSquaresHaveNoLinesAndNoPoints() throws Exception {
    Drawn drawn =
        new Drawn(40, 30, 600)
            .with(Drawn.disc(10, 10, 10))
            .with(Drawn.disc(20, 24, 0.6))
            .with(Drawn.bar(30, 12, 9, 9, 31));
    Fine fine = fine(drawn, 600);
    assertThat(fine.line()).isEmpty();
    assertThat(fine.tips()).isZero();
    assertThat(fine.specksUpTo(0.05)).isZero();
  }

  @Test
  void specksAreCountedByTheirArea() throws Exception {
    Drawn drawn = new Drawn(40, 30, 600).with(Drawn.disc(20, 15, 20));
    IntStream.range(0, 20)
        .forEach(i -> drawn.with(Drawn.disc(1.5 + 1.9 * i, 2 + 0.13 * i % 1, i < 12 ? 0.2 : 0.5)));
    Fine fine = fine(drawn, 600);
    // Discs of 0.2 mm have 0.03 mm², those of 0.5 mm have 0.2 mm².
    assertThat(fine.specksUpTo(0.05)).isEqualTo(12);
    assertThat(fine.specksUpTo(0.3)).isEqualTo(20);
  }

  @ParameterizedTest
  @CsvSource({"10, 0.001", "1, 0.012"})
  void areasOfDiscs(double diameter, double share) throws Exception {
    Drawn drawn = new Drawn(12, 12, 600).with(Drawn.disc(6.013, 6.007, diameter));
    Picture picture = Drawn.picture(drawn.png());
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    double area = open.bits().count() * Math.pow(25.4 / 600, 2);
    double exact = Math.PI * diameter * diameter / 4;
    assertThat(area).isBetween(exact * (1 - share), exact * (1 + share));
  }

  @Test
  void ofATextureNothingFineIsMeasured() {
    Bits bits = new Bits(6400, 6400);
    for (int y = 0; y < bits.rows(); y++) {
      for (int x = y & 1; x < bits.columns(); x += 2) {
        bits.set(x, y);
      }
    }
    assertThat(bits.runs()).isEqualTo(6400L * 3200);
    assertThat(FineDetail.of(bits, 0.042, 0.042, false)).isEmpty();
  }

  @Test
  void columnsAreTurnedSixtyFourAtATime() {
    Bits bits = new Bits(131, 77);
    for (int i = 0; i < 3000; i++) {
      bits.set(i * 37 % 131, i * 53 % 77);
    }
    long runs = 0;
    for (int first = 0; first < 131; first += 64) {
      Bits turned = bits.turned(first);
      assertThat(turned.columns()).isEqualTo(77);
      assertThat(turned.rows()).isEqualTo(Math.min(64, 131 - first));
      for (int y = 0; y < 77; y++) {
        for (int x = 0; x < turned.rows(); x++) {
          assertThat(turned.get(y, x)).isEqualTo(bits.get(first + x, y));
        }
      }
      runs += turned.runs();
    }
    assertThat(bits.runsAcross()).isEqualTo(runs);
  }

  @Test
  void aFigureThatIsItsOwnMirrorImageIsNothingApart() throws Exception {
    assertThat(apart(new Drawn(20.066, 12, 300).with(Drawn.leaf(10.033, 6, 10, 5))))
        .isLessThan(0.01);
    assertThat(apart(new Drawn(20, 12, 300).with(Drawn.disc(5, 6, 6)))).isEqualTo(1);
    // From 3 to 15 mm, and mirrored from 5 to 17: 4 of 14 mm are apart.
    assertThat(apart(new Drawn(20, 12, 300).with(Drawn.bar(9, 6, 12, 6, 0)))).isBetween(0.27, 0.30);
    assertThat(apart(new Drawn(20, 12, 300))).isZero();
  }

  private static double apart(Drawn drawn) throws Exception {
    Picture picture = Drawn.picture(drawn.png());
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    return open.bits().mirrorApart();
  }
}
