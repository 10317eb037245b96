package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static strikeoff.artwork.Reeds.polygon;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import strikeoff.plan.PrintedCells;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/** What prints in a part of a film, by its cells, against areas that JTS works out. */
class CellCountTest {

  private static final Pair SIZE = new Pair(new Length(300), new Length(220));

  private static final Reeds REEDS = new Reeds();

  private static final Bits FILM = REEDS.film(254).bits();

  private static double squareCm(PrintedCells cells, Polygon shape) {
    Coordinate[] corners = shape.getCoordinates();
    double[] x = new double[corners.length - 1];
    double[] y = new double[corners.length - 1];
    for (int i = 0; i < x.length; i++) {
      x[i] = corners[i].x;
      y[i] = corners[i].y;
    }
    return cells.within(x, y) / 100;
  }

  private static Polygon turned(double x, double y, double length, double width, double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double[] corners = new double[8];
    double[][] ends = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
    for (int i = 0; i < 4; i++) {
      double along = ends[i][0] * length / 2;
      double across = ends[i][1] * width / 2;
      corners[2 * i] = x + along * cos - across * sin;
      corners[2 * i + 1] = y + along * sin + across * cos;
    }
    return polygon(corners);
  }

  /** Forty rectangles at any turn: 0.06 cm² or 0.2 % off at the worst, as was studied. */
  @Test
  void rectanglesAtAnyTurn() {
    PrintedCells cells = CellCount.of(FILM, SIZE, false);
    Random random = new Random(7);
    for (int i = 0; i < 40; i++) {
      Polygon shape =
          turned(
              random.nextDouble() * 300,
              random.nextDouble() * 220,
              30 + random.nextDouble() * 300,
              30 + random.nextDouble() * 200,
              random.nextDouble() * Math.PI);
      double exact = REEDS.within(shape);
      assertThat(squareCm(cells, shape))
          .as("%d: %s", i, shape)
          .isCloseTo(exact, within(Math.max(0.06, 0.002 * exact)));
    }
  }

  /**
   * Frames of 50 x 44 cm at a repeat of 30 cm reach 10 cm over both neighbours: 440 cm² of their
   * rectangles.
   */
  @Test
  void framesOverBothNeighbours() {
    PrintedCells cells = CellCount.of(FILM, SIZE, false);
    Polygon left = polygon(-200, -110, 100, -110, 100, 330, -200, 330);
    Polygon right = polygon(200, -110, 500, -110, 500, 330, 200, 330);
    double exact = REEDS.within(left) + REEDS.within(right);
    assertThat(exact).isBetween(60.0, 220.0);
    assertThat(squareCm(cells, left) + squareCm(cells, right)).isCloseTo(exact, within(0.3));
    PrintedCells back = CellCount.of(FILM, SIZE, true);
    assertThat(squareCm(back, left)).isCloseTo(REEDS.within(right), within(0.15));
  }

  @Test
  void whatIsAloneInACellIsNotLostAndHolesAreSeen() {
    Bits bits = new Bits(1000, 1000);
    bits.set(505, 999);
    Pair size = new Pair(new Length(20), new Length(20));
    PrintedCells one = CellCount.of(bits, size, false);
    assertThat(one.columns()).isEqualTo(20);
    assertThat(one.share(10, 0)).isEqualTo(1);
    assertThat(CellCount.of(bits, size, true).share(9, 0)).isEqualTo(1);
    for (int x = 0; x < 50; x++) {
      for (int y = 0; y < 50; y++) {
        if (x != 7 || y != 7) {
          bits.set(x, y);
        }
      }
    }
    assertThat(CellCount.of(bits, size, false).share(0, 19)).isEqualTo(PrintedCells.FULL - 1);
  }

  /** Memory is bounded: however large a film is, it has about a million cells at most. */
  @Test
  void aVeryLargeOrVeryCoarseFilmHasLargerCells() {
    Pair hall = new Pair(new Length(100_000), new Length(100_000));
    PrintedCells large = CellCount.of(new Bits(9000, 9000), hall, false);
    assertThat(large.columns() * large.rows()).isLessThan(1_100_000);
    Pair metre = new Pair(new Length(1000), new Length(1000));
    PrintedCells coarse = CellCount.of(new Bits(400, 400), metre, false);
    assertThat(coarse.columns()).isEqualTo(100);
  }
}
