package strikeoff.artwork.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import strikeoff.plan.Design;

/** Films of 40 x 40 cells, by counting them. */
class PrintAtBorderTest {

  private static final CellFilms FILMS = new CellFilms(40, 40);
  private static final CellFilms.Shape SQUARE = (x, y) -> x >= 10 && x < 30 && y >= 10 && y < 30;

  private static PrintAtBorder second(CellFilms.Shape first, CellFilms.Shape second) {
    Design design =
        FILMS.design(FILMS.separation(1, false, first), FILMS.separation(2, true, second));
    Design.Separation later = design.separation(2);
    return PrintAtBorder.of(design, later, later.artwork().orElseThrow()).orElseThrow();
  }

  @Test
  void aNegativePrintsItsBorderAndWhatLiesRoundItsMotif() {
    CellFilms.Shape half = (x, y) -> SQUARE.prints(x, y) && x < 20;
    PrintAtBorder negative = second(SQUARE, (x, y) -> !half.prints(x, y));
    assertThat(negative.border().fraction()).isEqualTo(1);
    assertThat(negative.printed().fraction()).isEqualTo(1400 / 1600.0);
    assertThat(negative.bare().fraction()).isEqualTo(0.125);
    // The half of the square that its motif leaves.
    assertThat(negative.over().fraction()).isEqualTo(0.5);
  }

  @Test
  void aBlotchIsKnockedOutWhereOthersPrint() {
    PrintAtBorder blotch = second(SQUARE, (x, y) -> !SQUARE.prints(x, y));
    assertThat(blotch.border().fraction()).isEqualTo(1);
    assertThat(blotch.over().fraction()).isZero();
  }

  @Test
  void aMotifLeavesItsBorder() {
    assertThat(second(SQUARE, SQUARE).border().fraction()).isZero();
    assertThat(second(SQUARE, (x, y) -> y == 0).border().fraction())
        .isCloseTo(40 / 156.0, within(1e-9));
  }

  @Test
  void ofTheFirstFilmNothingLiesBelow() {
    Design design = FILMS.design(FILMS.separation(1, false, (x, y) -> true));
    Design.Separation ground = design.separation(1);
    PrintAtBorder fact =
        PrintAtBorder.of(design, ground, ground.artwork().orElseThrow()).orElseThrow();
    assertThat(fact.over().fraction()).isZero();
    assertThat(fact.bare().fraction()).isZero();
  }
}
