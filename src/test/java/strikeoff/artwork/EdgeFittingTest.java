package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.artwork.Drawn.Shape;
import strikeoff.checks.Draws;
import strikeoff.plan.FilmFit;
import strikeoff.units.Length;
import strikeoff.units.Share;

/** Figures that were drawn to each other and then moved: how far is known. */
class EdgeFittingTest {

  private static final double SIDE = 110;
  private static final int PER_INCH = 200;
  private static final double POINT = 25.4 / PER_INCH;

  /** A blob of five lobes, some 28 mm in radius, so much larger all round. */
  private static Shape blob(double more) {
    return (x, y) -> {
      double angle = Math.atan2(y, x);
      double radius = 28 + 4 * Math.sin(5 * angle) + 3 * Math.cos(2 * angle + 1);
      // The distance from the edge, to some hundredths where it is that small.
      double slope = (20 * Math.cos(5 * angle) - 6 * Math.sin(2 * angle + 1)) / radius;
      return (Math.hypot(x, y) - radius) / Math.hypot(1, slope) <= more;
    };
  }

  /** A line of 2.4 mm along the edge of the blob, half of it on either side, and veins. */
  private static Shape outline(boolean veins) {
    return (x, y) ->
        blob(1.2).covers(x, y) && !blob(-1.2).covers(x, y)
            || veins && blob(-4).covers(x, y) && Math.abs(y + x / 3) % 7 < 1.2;
  }

  /** The same moved to the right and down, and made larger from where its middle is. */
  private static Bits film(Shape shape, double right, double down, double scale) {
    Bits bits = new Bits((int) (SIDE / POINT), (int) (SIDE / POINT));
    for (int y = 0; y < bits.rows(); y++) {
      for (int x = 0; x < bits.columns(); x++) {
        double along = ((x + 0.5) * POINT - SIDE / 2 - right) / scale;
        double across = ((y + 0.5) * POINT - SIDE / 2 - down) / scale;
        if (shape.covers(along, across)) {
          bits.set(x, y);
        }
      }
    }
    return bits;
  }

  private static FilmFit fit(Bits one, Bits other) {
    return EdgeFitting.of(one, other, POINT, POINT, new Length(20), new Share(0.1)).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "1.5, 0", "-3, 0", "5, 0", "-4, 2.5", "0, -8", "11, 7", "-17, 12"})
  void aFilmThatWasMovedIsFoundToATenthOfAMillimetre(double right, double down) {
    for (boolean veins : new boolean[] {false, true}) {
      FilmFit fit = fit(film(blob(0), 0, 0, 1), film(outline(veins), right, down, 1));
      assertThat(fit.right().mm()).isCloseTo(right, within(0.1));
      assertThat(fit.far().mm()).isCloseTo(-down, within(0.1));
      assertThat(fit.scale().fraction()).isCloseTo(1, within(0.003));
      assertThat(fit.lap().mm()).isCloseTo(1.2, within(0.1));
      assertThat(fit.spreadMoved().mm()).isLessThan(0.1);
      assertThat(fit.facingMoved().mm()).isCloseTo(fit.edge().mm(), within(0.02 * fit.edge().mm()));
    }
  }

  @Property(tries = 20, seed = Draws.ALIKE)
  void movesAndSizesAreFound(
      @ForAll @DoubleRange(min = -12, max = 12) double right,
      @ForAll @DoubleRange(min = -12, max = 12) double down,
      @ForAll @DoubleRange(min = 0.93, max = 1.07) double scale) {
    FilmFit fit = fit(film(blob(0), right, down, scale), film(outline(true), 0, 0, 1));
    // Back to the middle of the page, a place that was moved and made larger.
    FilmFit back = fit.ofOther();
    // Of a figure of 7 cm, a hundredth of its size moves no edge by more than a third of a mm.
    assertThat(back.scale().fraction()).isCloseTo(scale, within(0.012));
    assertThat(back.right().mm()).isCloseTo(right, within(0.2));
    assertThat(back.far().mm()).isCloseTo(-down, within(0.2));
  }

  /**
   * A colour that was choked or spread lies where it should, with a strip of one width all round.
   */
  @ParameterizedTest
  @CsvSource({"-1.9", "-1.2", "-0.6", "0.5", "0.9"})
  void aColourThatWasChokedOrSpreadIsNotMoved(double spread) {
    FilmFit fit = fit(film(blob(spread), 0, 0, 1), film(outline(true), 0, 0, 1));
    assertThat(fit.by(new Length(SIDE), new Length(SIDE)).mm()).isLessThan(0.3);
    assertThat(fit.lap().mm()).isCloseTo(1.2 + spread, within(0.1));
    assertThat(fit.spread().mm()).isLessThan(0.1);
  }

  /** Two colours that lap or gape, one of them in a hole of the other. */
  @ParameterizedTest
  @CsvSource({"0.8", "-0.5"})
  void aColourInAHoleOfAnotherIsFound(double lap) {
    Shape hole = (x, y) -> Math.hypot(x, y) < 48 && !blob(-lap).covers(x, y);
    FilmFit fit = fit(film(blob(0), 0, 0, 1), film(hole, 4, -3, 1));
    assertThat(fit.right().mm()).isCloseTo(4, within(0.1));
    assertThat(fit.far().mm()).isCloseTo(3, within(0.1));
    assertThat(fit.lap().mm()).isCloseTo(lap, within(0.1));
  }

  /** Lines all one way say nothing of a move along them: none by more than a frame is off. */
  @Test
  void whatRunsOneWayIsNotMovedThatWay() {
    Shape bars = (x, y) -> Math.abs(y) < 40 && Math.abs(x) < 30 && Math.abs(x + 60) % 20 < 10;
    Shape lines = (x, y) -> Math.abs(y) < 55 && Math.abs(x) < 31 && (Math.abs(x + 60.5) % 10) < 1;
    FilmFit fit = fit(film(bars, 0, 0, 1), film(lines, 0.7, 0, 1));
    assertThat(fit.far().mm()).isCloseTo(0, within(0.9));
  }

  @Test
  void whatCrossesHasNoEdgeInCommon() {
    Shape mesh = (x, y) -> Math.abs(x + y) % 9 < 1 || Math.abs(x - y) % 11 < 1;
    FilmFit fit = fit(film(blob(0), 0, 0, 1), film(mesh, 0, 0, 1));
    assertThat(fit.spreadMoved().mm()).isGreaterThan(0.6);
  }

  @Test
  void aFilmWithoutEdgesFitsNothing() {
    Bits blank = new Bits(300, 300);
    Bits dot = new Bits(300, 300);
    dot.set(100, 120, 110);
    assertThat(EdgeFitting.of(blank, dot, POINT, POINT, new Length(20), new Share(0.1))).isEmpty();
  }
}
