package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
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
