package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class TubeTest {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final Tube flat = new Tube(false, 4300);
  private final Tube round = new Tube(true, 100);

  // Arithmetic: [0,40]×[0,30] and [25,70]×[20,60] share 15 × 10 = 150; their union is 2850.
  @Test
  void rectanglesShareWhatArithmeticSays() {
    Geometry one = rectangle(0, 40, 0, 30);
    Geometry other = rectangle(25, 70, 20, 60);
    assertThat(shared(flat, one, other)).isEqualTo(150);
    assertThat(one.getArea() + other.getArea() - shared(flat, one, other)).isEqualTo(2850);
  }

  @Test
  void touchingEdgesShareNothing() {
    assertThat(shared(flat, rectangle(0, 10, 0, 10), rectangle(10, 20, 0, 10))).isZero();
    assertThat(flat.distance(rectangle(0, 10, 0, 10), rectangle(10, 20, 0, 10))).isZero();
  }

  @Test
  void oneInsideTheOtherSharesAllOfItself() {
    assertThat(shared(flat, rectangle(0, 40, 0, 30), rectangle(5, 10, 5, 10))).isEqualTo(25);
  }

  // Sutherland–Hodgman example: nine-cornered subject clipped by the square 100–300, area
  // 37083.333.
  @Test
  void aShapeOfManyCornersIsClipped() {
    Geometry subject =
        polygon(
            50, 150, 200, 50, 350, 150, 350, 300, 250, 300, 200, 250, 150, 350, 100, 250, 100, 200);
    assertThat(shared(flat, subject, rectangle(100, 300, 100, 300)))
        .isCloseTo(37083.333333, within(1e-6));
  }

  // Shoelace formula, well-known example: (3,4)(5,11)(12,8)(9,5)(5,6) has area 30.
  @Test
  void aShapeSharesItsWholeAreaWithACoverOfIt() {
    Geometry shape = polygon(3, 4, 5, 11, 12, 8, 9, 5, 5, 6);
    assertThat(shared(flat, shape, rectangle(0, 20, 0, 20))).isCloseTo(30, within(1e-9));
  }

  // Octagon: a unit square and the same turned by 45° share 2(√2 − 1).
  @Test
  void aSquareAndItselfTurnedShareAnOctagon() {
    double half = Math.sqrt(0.5);
    Geometry turned = polygon(0.5, 0.5 - half, 0.5 + half, 0.5, 0.5, 0.5 + half, 0.5 - half, 0.5);
    assertThat(shared(flat, rectangle(0, 1, 0, 1), turned)).isCloseTo(0.8284271247, within(1e-9));
  }

  @Test
  void roundATubeTheEndMeetsTheBeginning() {
    Geometry last = rectangle(90, 112, 0, 10);
    Geometry first = rectangle(5, 20, 5, 15);
    assertThat(shared(round, last, first)).isEqualTo(7 * 5);
    assertThat(shared(round, first, last)).isEqualTo(7 * 5);
    assertThat(shared(new Tube(false, 100), last, first)).isZero();
  }

  @Test
  void theShorterWayRoundCounts() {
    assertThat(round.distance(rectangle(1, 5, 0, 10), rectangle(90, 97, 0, 10))).isEqualTo(4);
  }

  @Test
  void whatLiesAcrossTheSeamHasTwoBounds() {
    assertThat(round.bounds(new Envelope(-8, 12, 0, 10)))
        .containsExactly(new Envelope(92, 100, 0, 10), new Envelope(0, 12, 0, 10));
    assertThat(round.bounds(new Envelope(40, 160, 0, 10)))
        .containsExactly(new Envelope(0, 100, 0, 10));
  }

  @Test
  void anIndexFindsAcrossTheSeamAndEachThingOnce() {
    ClothIndex<String> index = new ClothIndex<>(round);
    index.add(rectangle(90, 112, 0, 10), "last");
    index.add(rectangle(40, 60, 0, 10), "middle");
    assertThat(index.near(rectangle(-5, 15, 0, 10), 0)).containsExactly("last");
    assertThat(index.near(rectangle(20, 30, 0, 10), 9)).containsExactly("last");
    assertThat(index.near(rectangle(20, 30, 0, 10), 10)).containsExactly("last", "middle");
  }

  @Test
  void aLengthWithoutEndOrBeginningIsNoCloth() {
    for (double length : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new Tube(true, length)).hasMessageContaining("no cloth of length");
    }
  }

  @Test
  void everyPlaceOnATubeHasOneNameAndOnAFlatClothItsOwn() {
    double[][] places = {{0, 0}, {99.5, 99.5}, {100, 0}, {250, 50}, {-8, 92}, {-100, 0}};
    for (double[] place : places) {
      assertThat(round.wrap(place[0])).as("%s", place[0]).isEqualTo(place[1]);
      assertThat(flat.wrap(place[0])).isEqualTo(place[0]);
    }
    // so little before the seam that it is the seam
    assertThat(round.wrap(-1e-20)).isZero();
  }

  @Test
  void whatGoesRoundTwiceAndAHalfMeetsAnotherThingThreeTimes() {
    // 0 to 250 passes 5 to 20 at 5, 105 and 205: 3 · 15 · 10
    Geometry band = rectangle(0, 250, 0, 10);
    Geometry patch = rectangle(5, 20, 0, 10);
    assertThat(shared(round, band, patch)).isEqualTo(450);
    assertThat(shared(round, patch, band)).isEqualTo(450);
    // and 60 to 80 at 60 and 160 only
    assertThat(shared(round, band, rectangle(60, 80, 0, 10))).isEqualTo(400);
  }

  @Test
  void aStripAsWideAsTheToleranceIsNotShared() {
    Geometry one = rectangle(0, 10, 0, 10);
    assertThat(flat.overlaps(one, rectangle(10 - 0.49, 20, 0, 10))).isFalse();
    assertThat(flat.overlaps(one, rectangle(10 - 0.51, 20, 0, 10))).isTrue();
    assertThat(flat.overlaps(one, rectangle(0, 10, 10 - 0.49, 20))).isFalse();
    assertThat(flat.overlaps(one, rectangle(0, 10, 10 - 0.51, 20))).isTrue();
    // corner on corner
    assertThat(flat.overlaps(one, rectangle(10, 20, 10, 20))).isFalse();
  }

  @Test
  void distanceIsThatOfPythagorasAlsoAcrossTheSeam() {
    // 3 along and 4 across
    assertThat(flat.distance(rectangle(0, 10, 0, 10), rectangle(13, 20, 14, 20))).isEqualTo(5);
    assertThat(round.distance(rectangle(90, 99, 0, 10), rectangle(2, 5, 14, 20))).isEqualTo(5);
    assertThat(round.distance(rectangle(2, 5, 14, 20), rectangle(90, 99, 0, 10))).isEqualTo(5);
    // on a flat cloth the same two lie 85 apart along
    assertThat(flat.distance(rectangle(90, 99, 0, 10), rectangle(2, 5, 14, 20)))
        .isCloseTo(Math.hypot(85, 4), within(1e-12));
    // a square on its corner, whose tip is at 99
    Geometry tip = polygon(91, 5, 95, 1, 99, 5, 95, 9);
    assertThat(round.distance(tip, rectangle(2, 5, 4, 6))).isCloseTo(3, within(1e-12));
    assertThat(round.distance(rectangle(2, 5, 4, 6), tip)).isCloseTo(3, within(1e-12));
    assertThat(shared(round, tip, rectangle(-3, 5, 0, 10))).as("a tip of 2").isEqualTo(4);
  }

  @Test
  void boundsEndWithTheTubeAndGoOnFromItsBeginning() {
    assertThat(round.bounds(new Envelope(92, 100, 2, 10)))
        .containsExactly(new Envelope(92, 100, 2, 10));
    assertThat(round.bounds(new Envelope(192, 201, 2, 10)))
        .containsExactly(new Envelope(92, 100, 2, 10), new Envelope(0, 1, 2, 10));
    assertThat(round.bounds(new Envelope(30, 130, 2, 10)))
        .containsExactly(new Envelope(0, 100, 2, 10));
    assertThat(flat.bounds(new Envelope(-8, 12, 2, 10)))
        .containsExactly(new Envelope(-8, 12, 2, 10));
  }

  /**
   * Line, from, to; free is the way from the stretch to the line, below zero if it runs through.
   */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          false, 50,  40, 60,  -1
          false, 40,  40, 60,   0
          false, 60,  40, 60,   0
          false, 30,  40, 60,  10
          false, 75,  40, 60,  15
          true,   0,  90, 112, -1
          true,   5,  90, 112, -1
          true, 105,  90, 112, -1
          true,  95,  -8, 12,  -1
          true,  12,  90, 112,  0
          true,  90,  90, 112,  0
          true,   0,  88, 100,  0
          true,   0,   0, 10,   0
          true,   0,  90, 98,   2
          true,   0,   5, 20,   5
          true,  20,  90, 112,  8
          true,  80,  90, 112, 10
          true,  50,  90, 98,  40
          true,  50, 190, 198, 40
          """)
  void aLineRunsThroughOrPassesAtADistance(
      boolean closed, double line, double from, double to, double free) {
    Tube tube = closed ? round : new Tube(false, 100);
    assertThat(tube.runsThrough(line, from, to)).isEqualTo(free < 0);
    assertThat(tube.distanceToLine(line, from, to)).isCloseTo(Math.max(0, free), within(1e-9));
  }

  @Test
  void aLineWithinTheToleranceOfAnEdgeRunsAlongIt() {
    for (Tube tube : List.of(round, new Tube(false, 100))) {
      assertThat(tube.runsThrough(40.49, 40, 60)).isFalse();
      assertThat(tube.runsThrough(59.51, 40, 60)).isFalse();
      assertThat(tube.runsThrough(40.51, 40, 60)).isTrue();
      assertThat(tube.runsThrough(59.49, 40, 60)).isTrue();
    }
  }

  /** In square millimetres, as coordinates are in millimetres. */
  private static double shared(Tube tube, Geometry one, Geometry other) {
    return tube.overlap(one, other).squareCm() * 100;
  }

  private static Geometry rectangle(double x0, double x1, double y0, double y1) {
    return polygon(x0, y0, x1, y0, x1, y1, x0, y1);
  }

  private static Geometry polygon(double... corners) {
    Coordinate[] ring = new Coordinate[corners.length / 2 + 1];
    for (int i = 0; i < corners.length / 2; i++) {
      ring[i] = new Coordinate(corners[2 * i], corners[2 * i + 1]);
    }
    ring[ring.length - 1] = ring[0];
    return GEOMETRY.createPolygon(ring);
  }
}
