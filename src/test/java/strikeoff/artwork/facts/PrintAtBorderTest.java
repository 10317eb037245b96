package strikeoff.artwork.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import strikeoff.plan.Design;
import strikeoff.policy.yaml.PolicyReader;

/** Films of 40 x 40 cells, by counting them. */
class PrintAtBorderTest {

  private static final CellFilms FILMS = new CellFilms(40, 40);
  private static final CellFilms.Shape SQUARE = (x, y) -> x >= 10 && x < 30 && y >= 10 && y < 30;

  private static PrintAtBorder second(CellFilms.Shape first, CellFilms.Shape second) {
    Design design =
        FILMS.design(FILMS.separation(1, false, first), FILMS.separation(2, true, second));
    Design.Separation later = design.separation(2);
    return of(design, later);
  }

  private static PrintAtBorder of(Design design, Design.Separation separation) {
    return PrintAtBorder.of(
            design,
            separation,
            separation.artwork().orElseThrow(),
            PolicyReader.builtIn().artwork())
        .orElseThrow();
  }

  /** A line of one cell round the square: 16 x 16 cells of it lie inside. */
  private static final CellFilms.Shape LINE =
      (x, y) -> x >= 11 && x < 29 && y >= 11 && y < 29 && !(x > 11 && x < 28 && y > 11 && y < 28);

  private static PrintAtBorder first(CellFilms.Shape first, CellFilms.Shape... others) {
    Design.Separation[] all = new Design.Separation[others.length + 2];
    all[0] = FILMS.separation(1, false, first);
    all[1] = FILMS.separation(2, true, LINE);
    for (int i = 0; i < others.length; i++) {
      all[i + 2] = FILMS.separation(i + 3, false, others[i]);
    }
    Design design = FILMS.design(all);
    return of(design, design.separation(1));
  }

  @Test
  void whatANegativeFillLeavesBareIsWhatItsOutlineEncloses() {
    // Of the square's 20 x 20 cells 16 x 16 lie within the line, and 400 - 324 outside it.
    assertThat(first((x, y) -> !SQUARE.prints(x, y)).enclosed().fraction())
        .isEqualTo(256 / (256 + 76.0));
    assertThat(first(SQUARE).enclosed().fraction()).isZero();
  }

  @Test
  void roundAMotifThatIsFilledAGroundLeavesNothingBare() {
    assertThat(first((x, y) -> !SQUARE.prints(x, y), SQUARE).enclosed().fraction()).isZero();
    // Half of it is filled.
    CellFilms.Shape half = (x, y) -> SQUARE.prints(x, y) && x < 20;
    assertThat(first((x, y) -> !SQUARE.prints(x, y), half).enclosed().fraction())
        .isEqualTo(128 / (256 + 38.0));
  }

  @Test
  void anOutlineThatPrintsMoreThanItLeavesIsANegative() {
    assertThat(second(SQUARE, (x, y) -> !LINE.prints(x, y)).negativeOutline()).isTrue();
    assertThat(second(SQUARE, LINE).negativeOutline()).isFalse();
    Design fill = FILMS.design(FILMS.separation(1, false, (x, y) -> !LINE.prints(x, y)));
    assertThat(of(fill, fill.separation(1)).negativeOutline()).isFalse();
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
    PrintAtBorder fact = of(design, ground);
    assertThat(fact.over().fraction()).isZero();
    assertThat(fact.bare().fraction()).isZero();
  }
}
