package strikeoff.artwork.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.document.PlanPath;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.PrintedCells;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Pair;
import strikeoff.units.Share;

/** A flag of 20 x 20 cells and lines over it, by counting cells. */
class KeyOnEdgesTest {

  private static final int SIDE = 40;

  /** Which cells print. */
  @FunctionalInterface
  private interface Shape {
    boolean prints(int column, int row);
  }

  private static final Shape FLAG = (x, y) -> x >= 5 && x < 25 && y >= 10 && y < 30;

  private static Design.Separation separation(int number, boolean key, Shape shape) {
    byte[] shares = new byte[SIDE * SIDE];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = (byte) (shape.prints(i % SIDE, i / SIDE) ? PrintedCells.FULL : 0);
    }
    Length side = new Length(SIDE);
    Artwork film =
        new Artwork(
            number + ".png",
            Artwork.Tone.DARK,
            SIDE,
            SIDE,
            Optional.<Pair>empty(),
            new Share(0.5),
            new Artwork.Tones(List.of()),
            Optional.of(new Artwork.Reach(new Length(0), side, new Length(0), side)),
            new PrintedCells(SIDE, SIDE, 1, 1, shares),
            Optional.empty(),
            Optional.empty(),
            new Share(0),
            Optional.empty(),
            Optional.empty());
    return new Design.Separation(
        number,
        "s" + number,
        "p" + number,
        new Length(0),
        new Length(0),
        side,
        side,
        new Area(1),
        1,
        key,
        Optional.empty(),
        Optional.empty(),
        Optional.of(film),
        PlanPath.ROOT.key("designs"));
  }

  private static List<KeyOnEdges> over(Shape colour, boolean key, Shape line) {
    Length side = new Length(SIDE);
    Design design =
        new Design(
            "flag",
            side,
            side,
            List.of(separation(1, false, colour), separation(2, key, line)),
            List.of(),
            PlanPath.ROOT.key("designs"));
    return KeyOnEdges.of(design, new Length(1));
  }

  /** Upright lines of 20 cells: one on the flag's left edge, one in its middle, one outside. */
  @Test
  void linesAreCountedWhereTheyRunAlongEdges() {
    Shape lines = (x, y) -> (x == 5 || x == 15 || x == 30) && y >= 10 && y < 30;
    KeyOnEdges fit = over(FLAG, true, lines).get(0);
    // Of the line in the middle, two cells at either end lie within a cell of the edge.
    assertThat(fit.along().fraction()).isEqualTo((20 + 4) / 60.0);
    // Turned over they stand at 34, 24 and 9.
    assertThat(fit.turned().fraction()).isEqualTo((20 + 4) / 60.0);
    assertThat(fit.better()).isEqualTo(1);
  }

  @Test
  void anOutlineThatLiesTheWrongWayFitsTurnedOver() {
    Shape outline = (x, y) -> FLAG.prints(x, y) && !(x > 5 && x < 24 && y > 10 && y < 29);
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
}
