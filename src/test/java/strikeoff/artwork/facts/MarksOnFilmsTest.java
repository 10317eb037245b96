package strikeoff.artwork.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Pair;

/** Films of 150 x 120 cells of a millimetre, with crosses. */
class MarksOnFilmsTest {

  private static final Policy POLICY = PolicyReader.builtIn();
  private static final CellFilms FILMS = new CellFilms(150, 120);
  private static final CellFilms.Shape MOTIF = (x, y) -> x > 40 && x < 110 && y > 40 && y < 80;
  private static final Optional<Pair> SAYS =
      Optional.of(new Pair(new Length(150), new Length(120)));

  /** Nine cells long and wide. */
  private static CellFilms.Shape cross(int middleX, int middleY) {
    return (x, y) ->
        Math.abs(x - middleX) <= 4 && y == middleY || Math.abs(y - middleY) <= 4 && x == middleX;
  }

  private static CellFilms.Shape all(CellFilms.Shape... shapes) {
    return (x, y) -> {
      boolean prints = false;
      for (CellFilms.Shape shape : shapes) {
        prints |= shape.prints(x, y);
      }
      return prints;
    };
  }

  private static CellFilms.Shape corners(CellFilms.Shape motif) {
    return all(motif, cross(8, 8), cross(141, 8), cross(8, 111), cross(141, 111));
  }

  private static Optional<MarksOnFilms> on(
      Optional<Pair> says, CellFilms.Shape one, CellFilms.Shape other) {
    Design design =
        FILMS.design(
            FILMS.separation(1, false, one, says), FILMS.separation(2, false, other, says));
    return MarksOnFilms.of(design, new Length(1), POLICY).stream().findFirst();
  }

  @Test
  void crossesInTheCornersOfAllFilmsAreMarks() {
    CellFilms.Shape leaf = (x, y) -> MOTIF.prints(x, y) && x + y < 130;
    MarksOnFilms marks = on(SAYS, corners(MOTIF), corners(leaf)).orElseThrow();
    assertThat(marks.count()).isEqualTo(4);
    // From 4 to 13 mm.
    assertThat(marks.strip().mm()).isEqualTo(13);
    assertThat(marks.largest().mm()).isEqualTo(9);
    assertThat(marks.clear()).isTrue();
    assertThat(marks.without()).isEmpty();
    PlanPath first = PlanPath.ROOT.key("designs").item(0);
    assertThat(marks.margins(Measures.METRIC).get(0))
        .hasSize(6)
        .startsWith(
            new Edit.Write(first.key("margin"), "1.3 cm"),
            new Edit.Write(first.key("size"), "12.4 cm x 9.4 cm"),
            new Edit.Write(first.key("at"), "\"1.3 cm, 1.3 cm\""));
  }

  @Test
  void whatIsFinestInACrossIsItsOwn() {
    MarksOnFilms marks = on(SAYS, MOTIF, corners(MOTIF)).orElseThrow();
    PlanPath first = PlanPath.ROOT.key("designs").item(0);
    PlanPath second = PlanPath.ROOT.key("designs").item(1);
    assertThat(marks.areAt(second, finest(8.5, 5))).isTrue();
    assertThat(marks.areAt(first, finest(8.5, 5))).as("a film without marks").isFalse();
    assertThat(marks.areAt(second, finest(60, 50))).as("in the motif").isFalse();
    assertThat(marks.areAt(second, Optional.empty())).isFalse();
  }

  private static Optional<Artwork.Finest> finest(double x, double y) {
    return Optional.of(
        new Artwork.Finest(new Length(0.4), new Length(9), new Length(x), new Length(y)));
  }

  /** 150 mm of the rectangle are 150 + 2 m of the film: m = 13 / (1 - 26 / 120), on the width. */
  @Test
  void withoutASizeOfTheirOwnTheRestFillsTheRectangle() {
    MarksOnFilms marks = on(Optional.empty(), corners(MOTIF), corners(MOTIF)).orElseThrow();
    assertThat(marks.margin().mm()).isEqualTo(17);
    assertThat(marks.margins(Measures.METRIC).get(0)).hasSize(2);
  }

  @Test
  void marksInTheMiddleOfTwoSidesAreFellows() {
    CellFilms.Shape sides = all(MOTIF, cross(75, 8), cross(75, 111));
    assertThat(on(SAYS, sides, sides).orElseThrow().count()).isEqualTo(2);
  }

  /** Set diagonally, askew, and three of them, of which one has no fellow across the middle. */
  @Test
  void crossesOnAllFilmsAreMarksWhereverTheyStand() {
    CellFilms.Shape diagonal = all(MOTIF, cross(8, 8), cross(141, 111));
    assertThat(on(SAYS, diagonal, diagonal).orElseThrow().count()).isEqualTo(2);
    CellFilms.Shape askew = all(MOTIF, cross(9, 60), cross(128, 111));
    assertThat(on(SAYS, askew, askew).orElseThrow().count()).isEqualTo(2);
    CellFilms.Shape three = all(MOTIF, cross(8, 8), cross(141, 8), cross(75, 111));
    assertThat(on(SAYS, three, three).orElseThrow().count()).isEqualTo(3);
  }

  @Test
  void dotsSetDiagonallyAreFellowsAndAskewAreTheDesigns() {
    CellFilms.Shape diagonal = all(MOTIF, dot(8, 8), dot(141, 111));
    assertThat(on(SAYS, diagonal, diagonal).orElseThrow().count()).isEqualTo(2);
    CellFilms.Shape askew = all(MOTIF, dot(9, 60), dot(128, 111));
    assertThat(on(SAYS, askew, askew)).isEmpty();
  }

  @Test
  void aDesignThatReachesIntoTheStripIsNotCut() {
    CellFilms.Shape wide = all(corners(MOTIF), (x, y) -> y == 60);
    MarksOnFilms marks = on(SAYS, wide, corners(MOTIF)).orElseThrow();
    assertThat(marks.clear()).isFalse();
    assertThat(marks.margins(Measures.METRIC)).isEmpty();
  }

  @Test
  void aLineAllRoundIsNotCutOff() {
    CellFilms.Shape frame = all(corners(MOTIF), (x, y) -> x == 1 || y == 1 || x == 148 || y == 118);
    assertThat(on(SAYS, frame, corners(MOTIF)).orElseThrow().clear()).isFalse();
  }

  @Test
  void whatIsNoCrossOnOneFilmAloneOrHasNoFellowIsTheDesigns() {
    CellFilms.Shape dots = all(MOTIF, dot(8, 8), dot(141, 8), dot(8, 111), dot(141, 111));
    assertThat(on(SAYS, dots, MOTIF)).isEmpty();
    CellFilms.Shape lone = all(MOTIF, cross(8, 8));
    assertThat(on(SAYS, lone, lone)).isEmpty();
    CellFilms.Shape inside = all(cross(50, 50), cross(99, 50));
    assertThat(on(SAYS, inside, inside)).as("far from the border").isEmpty();
  }

  /** Nine cells across, as a cross is. */
  private static CellFilms.Shape dot(int middleX, int middleY) {
    return (x, y) -> Math.hypot(x - middleX, y - middleY) <= 4.5;
  }

  @Test
  void crossesInFourCornersAreMarksOfOneFilmAlone() {
    MarksOnFilms marks = on(SAYS, MOTIF, corners(MOTIF)).orElseThrow();
    assertThat(marks.files()).containsExactly("2.png");
    assertThat(marks.without()).containsExactly("1.png");
    assertThat(marks.count()).isEqualTo(4);
    assertThat(marks.strip().mm()).isEqualTo(13);
    assertThat(marks.clear()).isTrue();
    // Cut off, it would fill the rectangle of one that isn't.
    assertThat(on(Optional.empty(), MOTIF, corners(MOTIF)).orElseThrow().clear()).isFalse();
  }

  /** At two sides, and in two corners across. */
  @Test
  void twoThatMirrorEachOtherAreMarksOfOneFilmAlone() {
    for (CellFilms.Shape marked :
        new CellFilms.Shape[] {
          all(MOTIF, cross(8, 60), cross(141, 60)),
          all(MOTIF, cross(60, 8), cross(60, 111)),
          all(MOTIF, cross(8, 8), cross(141, 111))
        }) {
      MarksOnFilms marks = on(SAYS, MOTIF, marked).orElseThrow();
      assertThat(marks.files()).containsExactly("2.png");
      assertThat(marks.without()).containsExactly("1.png");
      assertThat(marks.count()).isEqualTo(2);
      assertThat(marks.strip().mm()).isEqualTo(13);
    }
    assertThat(on(SAYS, MOTIF, all(MOTIF, cross(8, 30), cross(141, 70)))).isEmpty();
    assertThat(on(SAYS, MOTIF, all(cross(50, 60), cross(99, 60)))).as("far inside").isEmpty();
  }

  @Test
  void crossesAreMarksWhereFilmsHaveRectanglesOfTheirOwn() {
    Design.Separation large = FILMS.separation(1, false, MOTIF, SAYS);
    Design.Separation small =
        new CellFilms(100, 80)
            .separation(
                2,
                false,
                all(cross(8, 8), cross(91, 8), cross(8, 71), cross(91, 71)),
                Optional.of(new Pair(new Length(100), new Length(80))));
    assertThat(MarksOnFilms.of(FILMS.design(large, small), new Length(1), POLICY))
        .singleElement()
        .satisfies(marks -> assertThat(marks.files()).containsExactly("2.png"));
  }

  @Test
  void crossesInThreeCornersOrAllOverAreTheDesigns() {
    CellFilms.Shape three = all(MOTIF, cross(8, 8), cross(141, 8), cross(8, 111));
    assertThat(on(SAYS, three, MOTIF)).isEmpty();
    CellFilms.Shape[] many = new CellFilms.Shape[63];
    for (int i = 0; i < many.length; i++) {
      many[i] = cross(11 + 16 * (i % 9), 12 + 16 * (i / 9));
    }
    assertThat(on(SAYS, all(many), MOTIF)).isEmpty();
    assertThat(on(SAYS, corners((x, y) -> false), MOTIF)).isPresent();
    CellFilms.Shape deep = all(corners((x, y) -> false), cross(75, 60));
    assertThat(on(SAYS, deep, MOTIF)).isEmpty();
  }

  /** A dot and a ring round it are as large, but print differently. */
  @Test
  void aSmallMotifOfTwoColoursIsNone() {
    CellFilms.Shape dots = (x, y) -> (x / 9 % 15 == 1) && (y / 9 % 11 == 1);
    CellFilms.Shape rings =
        (x, y) -> dots.prints(x, y) && (x % 9 == 0 || x % 9 == 8 || y % 9 == 0 || y % 9 == 8);
    assertThat(on(SAYS, dots, rings)).isEmpty();
  }

  @Test
  void filmsOfAWrongSizeComeRightFirst() {
    Optional<Pair> other = Optional.of(new Pair(new Length(170), new Length(140)));
    assertThat(on(other, corners(MOTIF), corners(MOTIF))).isEmpty();
  }
}
