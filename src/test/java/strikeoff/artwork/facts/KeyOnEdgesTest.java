package strikeoff.artwork.facts;

import static org.assertj.core.api.Assertions.assertThat;

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
    assertThat(fit.turnedOver()).isFalse();
  }

  @Test
  void anOutlineThatLiesTheWrongWayFitsTurnedOver() {
    CellFilms.Shape outline = (x, y) -> FLAG.prints(x, y) && !(x > 5 && x < 24 && y > 10 && y < 29);
    KeyOnEdges right = over(FLAG, true, outline).get(0);
    assertThat(right.along().fraction()).isEqualTo(1);
    KeyOnEdges wrong = over(FLAG, true, (x, y) -> outline.prints(SIDE - 1 - x, y)).get(0);
    assertThat(wrong.turned().fraction()).isEqualTo(1);
    assertThat(wrong.along()).isEqualTo(right.turned());
  }

  @Test
  void whatIsNoOutlineIsNotFitted() {
    assertThat(over(FLAG, false, FLAG)).isEmpty();
  }
}
