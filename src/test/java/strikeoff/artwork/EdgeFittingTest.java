package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.artwork.Drawn.Shape;
import strikeoff.checks.Draws;
import strikeoff.plan.Artwork.Reach;
import strikeoff.plan.FilmFit;
import strikeoff.units.Angle;
import strikeoff.units.Length;
import strikeoff.units.Share;

/** Figures that were drawn to each other and then moved: how far is known. */
class EdgeFittingTest {

  private static final double SIDE = 110;
  private static final int PER_INCH = 200;
  private static final double POINT = 25.4 / PER_INCH;

  /** It prints all over its rectangle. */
  private static final Reach ALL =
      new Reach(new Length(0), new Length(SIDE), new Length(0), new Length(SIDE));

  private static final PoseBounds BOUNDS = bounds(0.1);

  private static PoseBounds bounds(double larger) {
    return new PoseBounds(new Length(20), new Share(larger), new Angle(3));
  }

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
    return film((x, y) -> shape.covers((x - right) / scale, (y - down) / scale), POINT, POINT);
  }

  /** Of points that are so long and so wide, in mm from its middle. */
  private static Bits film(Shape shape, double along, double across) {
    Bits bits = new Bits((int) (SIDE / along), (int) (SIDE / across));
    for (int y = 0; y < bits.rows(); y++) {
      for (int x = 0; x < bits.columns(); x++) {
        if (shape.covers((x + 0.5) * along - SIDE / 2, (y + 0.5) * across - SIDE / 2)) {
          bits.set(x, y);
        }
      }
    }
    return bits;
  }

  private static FilmFit fit(Bits one, Bits other) {
    return EdgeFitting.of(one, other, POINT, POINT, BOUNDS, new KnownEdges()).orElseThrow();
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

  /**
   * A long fill, 1.3 mm of which lie under a line drawn by hand, left open for a wing that it runs
   * under by 1.5 mm. Made larger, its edge would lie at the outer edge of the one line and as far
   * from the other's: a lap that is wider in one place is no size.
   */
  @ParameterizedTest
  @CsvSource({"0, 0", "1.2, 0", "3, -2"})
  void aFillThatIsTrappedMoreWidelyInOnePlaceIsOnlyMoved(double right, double down) {
    Shape fill = (x, y) -> body(x, y) <= 0 && wing(x, y) > -1.5;
    Shape outline =
        (x, y) -> {
          double half = 1.3 + 0.2 * Math.sin(37 * Math.atan2(y, x));
          return Math.abs(body(x, y)) <= half || Math.abs(wing(x, y)) <= half;
        };
    FilmFit fit = fit(film(fill, 0, 0, 1), film(outline, right, down, 1));
    assertThat(fit.right().mm()).isCloseTo(right, within(0.1));
    assertThat(fit.far().mm()).isCloseTo(-down, within(0.1));
    assertThat(fit.scale().fraction()).isEqualTo(1);
    assertThat(fit.skew().degrees()).isZero();
  }

  /** How far outside the edge of a long shape, in mm; within it if it is below zero. */
  private static double body(double x, double y) {
    return Math.hypot(x, y - held(y, 20)) - 30;
  }

  private static double wing(double x, double y) {
    return Math.hypot(x, y - 4 - held(y - 4, 12)) - 18;
  }

  private static double held(double at, double most) {
    return Math.max(-most, Math.min(most, at));
  }

  @Property(tries = 20, seed = Draws.ALIKE)
  void movesAndSizesAreFound(
      @ForAll @DoubleRange(min = -12, max = 12) double right,
      @ForAll @DoubleRange(min = -12, max = 12) double down,
      @ForAll @DoubleRange(min = 0.93, max = 1.07) double scale) {
    FilmFit fit = fit(film(blob(0), right, down, scale), film(outline(true), 0, 0, 1));
    // Back to the middle of the page, a place that was moved and made larger.
    FilmFit back = fit.ofOther();
    // Of a figure of 7 cm, two hundredths of its size move its edges by some 0.6 mm, nearly all of
    // them alike to half a point: that is told as a colour that was spread or choked, and no size.
    // Of one that is found, a hundredth moves no edge by more than a third of a mm.
    double found = back.scale().fraction();
    assertThat(found).isCloseTo(scale, within(found == 1 ? 0.022 : 0.012));
    assertThat(back.right().mm()).isCloseTo(right, within(0.2));
    assertThat(back.far().mm()).isCloseTo(-down, within(0.2));
  }

  /** The same turned anticlockwise about the middle of the page, in degrees, before it is moved. */
  private static Bits turned(Shape shape, double degrees, double right, double down) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    return film(
        (x, y) -> {
          double along = x - right;
          double across = y - down;
          return shape.covers(cos * along - sin * across, sin * along + cos * across);
        },
        POINT,
        POINT);
  }

  @Property(tries = 20, seed = Draws.ALIKE)
  void movesAndTurnsAreFound(
      @ForAll @DoubleRange(min = -8, max = 8) double right,
      @ForAll @DoubleRange(min = -8, max = 8) double down,
      @ForAll @DoubleRange(min = -2.8, max = 2.8) double degrees) {
    FilmFit fit = fit(turned(blob(0), degrees, right, down), film(outline(true), 0, 0, 1));
    FilmFit back = fit.ofOther();
    // Half a degree moves no edge of it by more than a third of a mm.
    assertThat(back.skew().degrees()).isCloseTo(degrees, within(0.5));
    assertThat(back.right().mm()).isCloseTo(right, within(0.2));
    assertThat(back.far().mm()).isCloseTo(-down, within(0.2));
    assertThat(fit.spreadMoved().mm()).isLessThan(0.15);
  }

  /** As a page lies that was fed askew: its corner stays, its other end is off. */
  @ParameterizedTest
  @CsvSource({"1", "-1", "2", "-2"})
  void aTurnIsFoundToATenthOfADegree(double degrees) {
    Shape bars =
        (x, y) -> Math.abs(x) < 8 && Math.abs(y) < 45 || Math.abs(y + 20) < 6 && Math.abs(x) < 40;
    Shape hole =
        (x, y) ->
            !(Math.abs(x) < 7 && Math.abs(y) < 44 || Math.abs(y + 20) < 5 && Math.abs(x) < 39);
    FilmFit fit = fit(turned(bars, degrees, 0, 0), film(hole, 0, 0, 1));
    assertThat(fit.skew().degrees()).isCloseTo(-degrees, within(0.1));
    assertThat(fit.scale().fraction()).isEqualTo(1);
    assertThat(fit.lap().mm()).isCloseTo(1, within(0.15));
    assertThat(fit.ofOther().skew().degrees()).isCloseTo(degrees, within(0.1));
  }

  /** There is but one way to lie in a hole, whichever of the two is moved; a turn goes with it. */
  @Property(tries = 50, seed = Draws.ALIKE)
  void theOtherFilmIsMovedBackByAllOfIt(
      @ForAll @DoubleRange(min = -20, max = 20) double right,
      @ForAll @DoubleRange(min = -20, max = 20) double far,
      @ForAll @DoubleRange(min = 0.9, max = 1.1) double scale,
      @ForAll @DoubleRange(min = -3, max = 3) double degrees) {
    FilmFit.Turned none = new FilmFit.Turned(new Length(0), new Length(0), new Length(0));
    FilmFit one =
        new FilmFit(
            new Length(1),
            new Length(1),
            new Length(1),
            new Length(right),
            new Length(far),
            new Share(scale),
            new Angle(degrees),
            new Length(0),
            new Length(0),
            new Length(0),
            new Length(0),
            new Length(0),
            new Length(0),
            none,
            none,
            none);
    FilmFit again = one.ofOther().ofOther();
    assertThat(again.apart(one, ALL, new Length(SIDE), new Length(SIDE)).mm()).isLessThan(1e-9);
  }

  /** A disc says nothing of a turn, nor in a hole of a strip that is free of its size. */
  @Test
  void whatIsRoundIsOnlyMoved() {
    Shape disc = (x, y) -> Math.hypot(x - 20, y + 10) < 12;
    Shape hole = (x, y) -> Math.hypot(x - 20, y + 10) > 11;
    FilmFit fit = fit(film(disc, 9, 0, 1), film(hole, 0, 0, 1));
    assertThat(fit.right().mm()).isCloseTo(-9, within(0.1));
    assertThat(fit.scale().fraction()).isEqualTo(1);
    assertThat(fit.skew().degrees()).isZero();
    assertThat(fit.elsewhere().mm()).isLessThan(0.5 * fit.facingMoved().mm());
  }

  /** Between two holes alike nobody knows which one it belongs into. */
  @Test
  void whatFitsElsewhereAsWellIsKnown() {
    Shape disc = (x, y) -> Math.hypot(x, y) < 6;
    Shape holes = (x, y) -> Math.hypot(x - 9, y) > 5 && Math.hypot(x + 10, y) > 5;
    FilmFit fit = fit(film(disc, 0, 0, 1), film(holes, 0, 0, 1));
    assertThat(fit.elsewhere().mm()).isGreaterThan(0.9 * fit.facingMoved().mm());
  }

  /**
   * A colour that was choked or spread lies where it should, with a strip of one width all round.
   */
  @ParameterizedTest
  @CsvSource({"-1.9", "-1.2", "-0.6", "0.5", "0.9"})
  void aColourThatWasChokedOrSpreadIsNotMoved(double spread) {
    FilmFit fit = fit(film(blob(spread), 0, 0, 1), film(outline(true), 0, 0, 1));
    assertThat(fit.by(ALL, new Length(SIDE), new Length(SIDE)).mm()).isLessThan(0.3);
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

  /**
   * Blades of 8 mm with outlines of 2 mm and midribs: much of them runs along something anywhere.
   */
  @ParameterizedTest
  @CsvSource({"3, 0", "5, 0", "-2, 3"})
  void amongManyLinesTheRightPlaceIsFound(double right, double down) {
    Shape blades = blades(4);
    Shape lines =
        (x, y) -> blades(5).covers(x, y) && !blades(3).covers(x, y) || blades(0.8).covers(x, y);
    FilmFit fit = fit(film(blades, 0, 0, 1), film(lines, right, down, 1));
    assertThat(fit.right().mm()).isCloseTo(right, within(0.15));
    assertThat(fit.far().mm()).isCloseTo(-down, within(0.15));
    assertThat(fit.lap().mm()).isCloseTo(1, within(0.15));
  }

  /** Five blades, leaning a little, so wide on either side of their midribs. */
  private static Shape blades(double half) {
    return (x, y) -> {
      for (int i = -2; i <= 2; i++) {
        double lean = (0.04 + 0.03 * i) * y;
        double top = -38 + 5 * Math.abs(i - 0.6);
        if (Math.abs(x - 17 * i - lean) <= half && y > top - half && y < 36 + half) {
          return true;
        }
      }
      return false;
    };
  }

  /** A figure without an axis: it fits the one way that it lies. */
  @Test
  void aFilmFitsTurnedBackTheWayThatItWasTurned() {
    Shape line = outline(false);
    Bits blob = film(blob(0), 0, 0, 1);
    FilmFit over = fit(blob, film((x, y) -> line.covers(-x, y), 0, 0, 1));
    FilmFit upended = fit(blob, film((x, y) -> line.covers(x, -y), 0, 0, 1));
    FilmFit round = fit(blob, film((x, y) -> line.covers(-x, -y), 0, 0, 1));
    assertThat(over.over().half().mm()).isLessThan(0.2);
    assertThat(over.upended().half().mm()).isGreaterThan(0.5);
    assertThat(over.round().half().mm()).isGreaterThan(0.5);
    assertThat(upended.upended().half().mm()).isLessThan(0.2);
    assertThat(upended.over().half().mm()).isGreaterThan(0.5);
    assertThat(round.round().half().mm()).isLessThan(0.2);
    assertThat(round.over().half().mm()).isGreaterThan(0.5);
  }

  /** Its own mirror image fits turned over as it lies; once it is moved it doesn't. */
  @Test
  void whatIsTurnedOverIsNotMovedToFit() {
    Shape shell = without(egg(27.5), egg(24.5));
    FilmFit right = fit(film(egg(26), 0, 0, 1), film(shell, 0, 0, 1));
    assertThat(right.over().facing().mm()).isCloseTo(right.facing().mm(), within(1.0));
    assertThat(right.over().spread().mm()).isLessThan(0.2);
    FilmFit moved = fit(film(egg(26), 0, 0, 1), film(shell, 6, 0, 1));
    assertThat(moved.spreadMoved().mm()).isLessThan(0.2);
    assertThat(moved.over().spread().mm()).isGreaterThan(1);
  }

  /** Blunter at its far end. */
  private static Shape egg(double half) {
    return (x, y) -> Math.hypot(x, y * (0.8 + y / 400)) <= half;
  }

  /** What lies in the one and not in the other. */
  private static Shape without(Shape one, Shape other) {
    return (x, y) -> one.covers(x, y) && !other.covers(x, y);
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
    assertThat(EdgeFitting.of(blank, dot, POINT, POINT, BOUNDS, new KnownEdges())).isEmpty();
  }

  /**
   * On other rectangles films may have any size: that of one that came out smaller is not asked.
   */
  @Test
  void aFilmOfAnotherSizeIsMadeNoLargerThanItMayBe() {
    Bits blob = film(blob(0), 0, 0, 1);
    Bits hole = film((x, y) -> !blob(0).covers(x, y), 0, 0, 0.97);
    Bits small = film((x, y) -> !blob(0).covers(x, y), 0, 0, 0.8);
    assertThat(sized(blob, hole, 0.1)).isCloseTo(0.97, within(0.003));
    assertThat(sized(blob, hole, 0)).isEqualTo(1);
    assertThat(sized(blob, small, 0.25)).isCloseTo(0.8, within(0.003));
    assertThat(sized(blob, small, 0.1)).isBetween(1 / 1.1001, 1.1001);
  }

  private static double sized(Bits one, Bits other, double larger) {
    return EdgeFitting.of(one, other, POINT, POINT, bounds(larger), new KnownEdges())
        .orElseThrow()
        .scale()
        .fraction();
  }

  /** A studio may set any limits; of a film of no size nothing can be told. */
  @Test
  @Timeout(20)
  void limitsThatAllowAnythingEndTheSearch() {
    Bits edge = film((x, y) -> x + y / 20 > 3, 0, 0, 1);
    FilmFit fit =
        EdgeFitting.of(
                edge,
                film(blob(0), 0, 0, 1),
                POINT,
                POINT,
                new PoseBounds(new Length(1_000_000), new Share(5), new Angle(3600)),
                new KnownEdges())
            .orElseThrow();
    assertThat(fit.scale().fraction()).isBetween(0.5, 2.0);
  }

  /** Bars 2 mm from each other all over half a metre: 250 of them have two edges each. */
  @Test
  void edgesOfWhatIsHatchedAllOverTakeLittleRoom() {
    Bits bars = new Bits(5000, 5000);
    for (int y = 0; y < bars.rows(); y++) {
      for (int x = 0; x < bars.columns(); x += 20) {
        bars.set(x + 5, x + 15, y);
      }
    }
    EdgePoints points = EdgePoints.of(bars, 0.1, 0.1);
    assertThat(points.count()).isBetween(150_000, 300_000);
    assertThat(points.length()).isCloseTo(250 * 2 * 500, within(2500.0));
    assertThat(points.thinned(1500).count()).isCloseTo(1500, within(10));
    assertThat(points.thinned(1500).length()).isCloseTo(points.length(), within(2500.0));
  }

  /** Points and rows too few to see a way out of, what is one tone, and what fits already. */
  @Test
  void whatSaysNothingOfAMoveIsNotMoved() {
    Bits dot = new Bits(866, 866);
    dot.set(400, 400);
    Bits black = film((x, y) -> true, 0, 0, 1);
    Bits blob = film(blob(0), 0, 0, 1);
    assertThat(moved(dot, blob)).isZero();
    assertThat(moved(black, blob)).isZero();
    assertThat(moved(black, black)).isZero();
    assertThat(moved(film((x, y) -> x < 0, 0, 0, 1), film((x, y) -> x > 3, 0, 0, 1))).isZero();
    for (double side : new double[] {POINT, 0.5, 1, 2, 5}) {
      Shape board = (x, y) -> (Math.floor(x / side) + Math.floor(y / side)) % 2 == 0;
      assertThat(moved(film(board, 0, 0, 1), film((x, y) -> !board.covers(x, y), 0, 0, 1)))
          .isZero();
    }
    for (int rows : new int[] {1, 6, 10}) {
      Bits left = new Bits(866, rows);
      Bits right = new Bits(866, rows);
      for (int y = 0; y < rows; y++) {
        left.set(0, 400, y);
        right.set(420, 866, y);
      }
      assertThat(moved(left, right)).isZero();
    }
  }

  private static double moved(Bits one, Bits other) {
    return EdgeFitting.of(one, other, POINT, POINT, BOUNDS, new KnownEdges())
        .map(fit -> fit.by(ALL, new Length(SIDE), new Length(SIDE)).mm())
        .orElse(0.0);
  }

  /** A fax in its usual mode has 204 by 98 points an inch (ITU-T T.4, from memory). */
  @Test
  void pointsNeedNotBeSquare() {
    double along = 25.4 / 204;
    double across = 25.4 / 98;
    Shape hole = (x, y) -> Math.hypot(x, y) < 48 && !blob(-0.6).covers(x - 4, y + 3);
    FilmFit fit =
        EdgeFitting.of(
                film(blob(0), along, across),
                film(hole, along, across),
                along,
                across,
                BOUNDS,
                new KnownEdges())
            .orElseThrow();
    assertThat(fit.right().mm()).isCloseTo(4, within(0.1));
    assertThat(fit.far().mm()).isCloseTo(3, within(0.1));
    assertThat(fit.lap().mm()).isCloseTo(0.6, within(0.1));
  }

  /** Some of them lie 21 mm apart but for the last bit: where the search ends, a step beyond 20. */
  @Test
  void edgesAtTheEndOfTheSearchEndNothingElse() {
    double point = 0.15;
    int apart = 140;
    for (int first = 10; first < 30; first++) {
      Bits one = new Bits(60, 300 + 2 * apart);
      Bits other = new Bits(60, 300 + 2 * apart);
      for (int y = first; y < first + 30; y++) {
        one.set(20, 40, y);
        other.set(20, 40, y + 30 + apart);
      }
      assertThat(EdgeFitting.of(one, other, point, point, bounds(0), new KnownEdges())).isPresent();
    }
  }

  /** Round a circle and a rhombus, as geometry has it. */
  @ParameterizedTest
  @CsvSource({"0.127, 0.127", "0.1245, 0.2592"})
  void edgesAreAsLongAsTheyAre(double along, double across) {
    Shape circle = (x, y) -> Math.hypot(x, y) < 30;
    assertThat(EdgePoints.of(film(circle, along, across), along, across).length())
        .isCloseTo(2 * Math.PI * 30, withinPercentage(1.5));
    Shape rhombus = (x, y) -> Math.abs(x) + Math.abs(2 * y) < 40;
    assertThat(EdgePoints.of(film(rhombus, along, across), along, across).length())
        .isCloseTo(4 * Math.hypot(40, 20), withinPercentage(1.5));
  }
}
