package strikeoff.artwork.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.plan.Design;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/** A flag of 20 x 20 cells and lines over it, by counting cells. */
class KeyOnEdgesTest {

  private static final int SIDE = 40;

  private static final CellFilms FILMS = new CellFilms(SIDE, SIDE);

  /** On a railed table, frames are off by 1 mm. */
  private static final Policy POLICY = PolicyReader.builtIn();

  private static final CellFilms.Shape FLAG = (x, y) -> x >= 5 && x < 25 && y >= 10 && y < 30;

  private static List<KeyOnEdges> over(CellFilms.Shape colour, boolean key, CellFilms.Shape line) {
    Design design =
        FILMS.design(FILMS.separation(1, false, colour), FILMS.separation(2, key, line));
    return KeyOnEdges.of(design, true, POLICY);
  }

  /** Upright lines of 20 cells: one on the flag's left edge, one in its middle, one outside. */
  @Test
  void linesAreCountedWhereTheyRunAlongEdges() {
    CellFilms.Shape lines = (x, y) -> (x == 5 || x == 15 || x == 30) && y >= 10 && y < 30;
    KeyOnEdges fit = over(FLAG, true, lines).get(0);
    // Of the line in the middle, two cells at either end lie within a cell of the edge.
    assertThat(fit.along().fraction()).isEqualTo((20 + 4) / 60.0);
    // Turned over they stand at 34, 24 and 9.
    assertThat(fit.turned().fraction()).isEqualTo((20 + 4) / 60.0);
    assertThat(fit.better()).isEqualTo(1);
  }

  @Test
  void anOutlineThatLiesTheWrongWayFitsTurnedOver() {
    CellFilms.Shape outline = (x, y) -> FLAG.prints(x, y) && !(x > 5 && x < 24 && y > 10 && y < 29);
    KeyOnEdges right = over(FLAG, true, outline).get(0);
    assertThat(right.along().fraction()).isEqualTo(1);
    KeyOnEdges wrong = over(FLAG, true, (x, y) -> outline.prints(SIDE - 1 - x, y)).get(0);
    assertThat(wrong.turned().fraction()).isEqualTo(1);
    assertThat(wrong.along()).isEqualTo(right.turned());
    assertThat(wrong.better()).isGreaterThan(1.5);
  }

  @Test
  void whatIsNoOutlineIsNotFitted() {
    assertThat(over(FLAG, false, FLAG)).isEmpty();
  }

  /** Corners, a step and a bay, so that it fits in one place alone; about 50 cm of edge. */
  private static CellFilms.Shape figure(double left, double near, double scale) {
    return (column, row) -> {
      double x = (column + 0.5 - left) / scale;
      double y = (row + 0.5 - near) / scale;
      return x > 0
          && x < 120
          && y > 0
          && y < 80
          && !(x > 70 && y > 50)
          && !(x < 20 && y > 30 && y < 45);
    };
  }

  private static CellFilms.Shape lineOf(CellFilms.Shape figure) {
    return (x, y) ->
        figure.prints(x, y)
            && !(figure.prints(x - 1, y)
                && figure.prints(x + 1, y)
                && figure.prints(x, y - 1)
                && figure.prints(x, y + 1));
  }

  private static KeyOnEdges outline(CellFilms.Shape of) {
    CellFilms films = new CellFilms(200, 160);
    Design design =
        films.design(
            films.separation(1, false, figure(30, 40, 1)), films.separation(2, true, lineOf(of)));
    return KeyOnEdges.of(design, true, POLICY).get(0);
  }

  @Test
  void anOutlineThatWasMovedIsFoundWhereItCameFrom() {
    KeyOnEdges key = outline(figure(37, 29, 1));
    assertThat(key.along().fraction()).isLessThan(0.3);
    assertThat(key.moved().fraction()).isEqualTo(1);
    assertThat(key.right().mm()).isCloseTo(-7, within(0.51));
    assertThat(key.far().mm()).isCloseTo(11, within(0.51));
    assertThat(key.scale().fraction()).isCloseTo(1, within(0.01));
    assertThat(key.by().mm()).isCloseTo(Math.hypot(7, 11), within(2.0));
    // Twice the sides of 120 and 80 mm, and the bay's two of 20.
    assertThat(key.length().mm()).isCloseTo(440, within(10.0));
    assertThat(key.offByMore()).isTrue();
  }

  /** Figures output at 94 % from the near left corner of their page. */
  @Test
  void anOutlineThatCameOutSmallerIsFoundBySize() {
    KeyOnEdges key = outline(figure(30 * 0.94, 40 * 0.94, 0.94));
    assertThat(key.moved().fraction()).isGreaterThan(0.9);
    assertThat(key.scale().fraction()).isCloseTo(1 / 0.94, within(0.015));
    assertThat(key.otherSize()).isTrue();
  }

  /** A figure of 36 x 24 cm about the middle of its page, as where a sheet was fitted to paper. */
  @Test
  void anOutlineThatWasOutputAtNinetyEightPerCentIsFound() {
    CellFilms films = new CellFilms(420, 300);
    Design design =
        films.design(
            films.separation(1, false, figure(30, 30, 3)),
            films.separation(2, true, lineOf(figure(210 - 180 * 0.98, 150 - 120 * 0.98, 2.94))));
    KeyOnEdges key = KeyOnEdges.of(design, true, POLICY).get(0);
    assertThat(key.moved().fraction()).isGreaterThan(0.9);
    assertThat(key.scale().fraction()).isCloseTo(1 / 0.98, within(0.01));
    assertThat(key.along().fraction()).isLessThan(0.6);
    assertThat(key.movedBetter()).isGreaterThan(2);
    assertThat(key.otherSize()).isTrue();
    assertThat(key.offByMore()).isTrue();
  }

  @Test
  void anOutlineThatFitsIsNotMoved() {
    KeyOnEdges key = outline(figure(30, 40, 1));
    assertThat(key.moved()).isEqualTo(key.along());
    assertThat(key.by().mm()).isZero();
    assertThat(key.offByMore()).isFalse();
  }

  /** A lattice on a figure has no edge in common with it, wherever it lies. */
  @Test
  void whatHasNoEdgeInCommonFitsNowhere() {
    KeyOnEdges key = outline((x, y) -> (x + y) % 9 == 0 || (x - y + 900) % 11 == 0);
    assertThat(key.moved().fraction()).isLessThan(0.6);
  }
}
