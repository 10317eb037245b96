package strikeoff.artwork.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.plan.Design;
import strikeoff.plan.FilmFit;
import strikeoff.plan.FilmFit.Turned;
import strikeoff.plan.Joint;
import strikeoff.plan.Joint.Side;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.Share;

/** Which of several films lies off, by how each pair of them fits. */
class FilmOnOthersTest {

  private static final CellFilms FILMS = new CellFilms(200, 100);
  private static final Policy POLICY = PolicyReader.builtIn();

  /** The one that is listed first fits the other once it is moved so far to the right, in mm. */
  private static Joint joint(int one, int other, double right) {
    return joint(one, other, right, 1, 400, right == 0 ? 0.1 : 1.5);
  }

  private static Joint joint(
      int one, int other, double right, double scale, double edge, double spread) {
    return joint(one, other, right, scale, edge, edge, spread, 0);
  }

  private static Joint joint(
      int one,
      int other,
      double right,
      double scale,
      double edge,
      double facing,
      double spread,
      double turned) {
    FilmFit fit = fit(right, scale, edge, facing, turned > 0 ? facing : edge, spread, turned, 0);
    return joint(one, other, fit);
  }

  /**
   * @param facing how much of the edges face each other as they lie
   * @param moved the same once it is moved
   * @param turned the same if one were turned over
   * @param elsewhere the same at another place
   */
  private static FilmFit fit(
      double right,
      double scale,
      double edge,
      double facing,
      double moved,
      double spread,
      double turned,
      double elsewhere) {
    return new FilmFit(
        new Length(edge),
        new Length(facing),
        new Length(moved),
        new Length(right),
        new Length(0),
        new Share(scale),
        new Angle(0),
        new Length(spread),
        new Length(0.1),
        new Length(spread),
        new Length(0.1),
        new Length(1.2),
        new Length(elsewhere),
        turned(turned),
        turned(0),
        turned(0));
  }

  private static Turned turned(double facing) {
    return new Turned(new Length(facing), new Length(0.1), new Length(0.1));
  }

  private static Joint joint(int one, int other, FilmFit fit) {
    Side side = new Side(new Area(0), new Area(0), Optional.empty(), Optional.empty());
    return new Joint(
        one,
        other,
        new Length(0.1),
        Optional.empty(),
        Optional.empty(),
        new Length(0),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(fit),
        new Area(0),
        side,
        side);
  }

  /** Two fills and an outline. */
  private static Optional<FilmOnOthers> of(Joint... joints) {
    CellFilms.Shape all = (x, y) -> true;
    Design design =
        FILMS.design(
            FILMS.separation(1, false, all),
            FILMS.separation(2, false, all),
            FILMS.separation(3, true, all));
    return FilmOnOthers.of(design.with(List.of(joints)), true, POLICY);
  }

  @Test
  void theFilmIsToldByWhoseMoveMostIsGained() {
    FilmOnOthers outline = of(joint(1, 2, 0), joint(1, 3, -5), joint(2, 3, -5)).orElseThrow();
    assertThat(outline.paste()).isEqualTo("p3");
    assertThat(outline.others()).containsExactly("1.png", "2.png");
    assertThat(outline.right().mm()).isEqualTo(5);
    assertThat(outline.by().mm()).isEqualTo(5);
    assertThat(outline.over().mm()).isEqualTo(800);
    assertThat(outline.liesOff()).isTrue();
    assertThat(outline.isOf("p1", "p3")).isTrue();
    assertThat(outline.isOf("p1", "p2")).isFalse();
    FilmOnOthers fill = of(joint(1, 2, 4), joint(1, 3, 4), joint(2, 3, 0)).orElseThrow();
    assertThat(fill.paste()).isEqualTo("p1");
    assertThat(fill.right().mm()).isEqualTo(4);
  }

  /**
   * The outline fits neither fill, which fit each other; what one of them gains most by is a size.
   */
  @Test
  void theFilmThatFitsNoneOfThoseThatFitEachOtherLiesOff() {
    FilmOnOthers outline =
        of(joint(1, 2, 0), joint(1, 3, 0, 0.99, 500, 1.5), joint(2, 3, 0, 0.97, 300, 1.5))
            .orElseThrow();
    assertThat(outline.liesOff()).isTrue();
    assertThat(outline.paste()).isEqualTo("p3");
    assertThat(outline.eitherOne()).isFalse();
    FilmOnOthers fill =
        of(joint(1, 2, 0, 0.98, 300, 1.5), joint(1, 3, 0), joint(2, 3, 0, 1.02, 400, 1.5))
            .orElseThrow();
    assertThat(fill.liesOff()).isTrue();
    assertThat(fill.paste()).isEqualTo("p2");
    assertThat(fill.eitherOne()).isFalse();
  }

  @Test
  void ofTwoThatOnlyFitElsewhereNothingTellsWhichIsOff() {
    assertThat(of(joint(1, 3, 4)).orElseThrow().eitherOne()).isTrue();
    assertThat(of(joint(1, 3, 0)).orElseThrow().eitherOne()).isFalse();
    assertThat(of(joint(1, 3, 0, 1, 400, 60, 1, 380)).orElseThrow().eitherOne()).isTrue();
  }

  /** Of two films either may be moved. */
  @Test
  void ofTwoTheOutlineIsToldUnlessTheOtherCameOutSmaller() {
    assertThat(of(joint(1, 3, 4)).orElseThrow().paste()).isEqualTo("p3");
    FilmOnOthers smaller = of(joint(1, 3, 0, 1 / 0.97, 400, 1)).orElseThrow();
    assertThat(smaller.paste()).isEqualTo("p1");
    assertThat(smaller.otherSize()).isTrue();
    // Corners lie 100 and 50 mm from the middle.
    assertThat(smaller.by().mm()).isCloseTo(Math.hypot(100, 50) * 0.0309, within(0.01));
    assertThat(of(joint(1, 3, 0, 0.97, 400, 1)).orElseThrow().paste()).isEqualTo("p3");
  }

  /** On a railed table frames are off by 1 mm; edges of 20 cm at least count. */
  @Test
  void whatFitsAsItLiesOrHardlyFitsAtAllDoesNotLieOff() {
    assertThat(of(joint(1, 3, 0)).orElseThrow().liesOff()).isFalse();
    assertThat(of(joint(1, 3, 0.9)).orElseThrow().liesOff()).isFalse();
    assertThat(off(fit(5, 1, 230, 80, 190, 1.5, 0, 0))).isFalse();
    assertThat(of(joint(1, 3, 5, 1, 210, 1.5)).orElseThrow().liesOff()).isTrue();
    // Not twice as even as it is.
    assertThat(of(joint(1, 3, 5, 1, 400, 0.19)).orElseThrow().liesOff()).isFalse();
  }

  private static boolean off(FilmFit fit) {
    return of(joint(1, 3, fit)).orElseThrow().liesOff();
  }

  /** A berry in a leaf: a short edge all round, at one place alone. */
  @Test
  void aSmallColourLiesOffWhereItFitsAllRoundAtOnePlace() {
    assertThat(off(fit(5, 1, 60, 30, 58, 1.5, 0, 20))).isTrue();
    assertThat(off(fit(5, 1, 60, 30, 50, 1.5, 0, 20))).isFalse();
    assertThat(off(fit(5, 1, 60, 30, 58, 1.5, 0, 55))).isFalse();
    assertThat(off(fit(5, 1, 45, 30, 45, 1.5, 0, 20))).isFalse();
    // What is chosen besides wants more evidence.
    assertThat(off(fit(5, 0.97, 60, 30, 58, 1.5, 0, 20))).isFalse();
  }

  /** At 98 % from its middle some of it still fits, and not half as evenly. */
  @Test
  void whatFitsMoreAndMoreEvenlyTogetherLiesOff() {
    assertThat(off(fit(0, 1.02, 1000, 660, 970, 0.15, 0, 0))).isTrue();
    assertThat(off(fit(0, 1.02, 1000, 900, 970, 0.15, 0, 0))).isFalse();
  }

  /** An echo of a shape, outside it: made larger it would fit. */
  @Test
  void whatComesNearNothingWasDrawnApart() {
    assertThat(of(joint(1, 3, 0, 1.07, 400, 30, 1, 0)).orElseThrow().liesOff()).isFalse();
    assertThat(of(joint(1, 3, 0, 1.07, 400, 50, 1, 0)).orElseThrow().liesOff()).isTrue();
    assertThat(of(joint(1, 3, 15, 1, 400, 30, 1, 0)).orElseThrow().liesOff()).isTrue();
  }

  @Test
  void whatFitsTwiceAsWellTurnedOverIsTold() {
    FilmOnOthers fill =
        of(joint(1, 3, 0, 1, 400, 60, 1, 380), joint(2, 3, 0), joint(1, 2, 0, 1, 300, 40, 1, 280))
            .orElseThrow();
    assertThat(fill.turnedOver()).isTrue();
    assertThat(fill.liesOff()).isFalse();
    assertThat(fill.paste()).isEqualTo("p1");
    assertThat(fill.eitherOne()).isFalse();
    // Halves that are nearly alike.
    assertThat(of(joint(1, 3, 0, 1, 400, 400, 0.1, 390)).orElseThrow().turnedOver()).isFalse();
  }

  /** Two blades that meet along a third of their edges, and a hub that both lap. */
  private static FilmFit onASide(double facing, double half, Turned round) {
    return new FilmFit(
        new Length(1000),
        new Length(facing),
        new Length(facing),
        new Length(0),
        new Length(0),
        new Share(1),
        new Angle(0),
        new Length(1.8),
        new Length(1.8),
        new Length(half),
        new Length(half),
        new Length(1.2),
        new Length(0),
        turned(0),
        turned(0),
        round);
  }

  @Test
  void whatTwoOthersFitTurnedByHalfATurnLiesUpsideDown() {
    Turned fits = new Turned(new Length(450), new Length(1), new Length(0.1));
    FilmFit off = onASide(200, 1.8, fits);
    FilmOnOthers down = of(joint(1, 2, off), joint(1, 3, off), joint(2, 3, 0)).orElseThrow();
    assertThat(down.turnedOver()).isTrue();
    assertThat(down.turn()).isEqualTo(FilmOnOthers.Turn.ROUND);
    assertThat(down.paste()).isEqualTo("p1");
    assertThat(down.eitherOne()).isFalse();
    assertThat(down.others()).containsExactly("2.png", "3.png");
    // One other alone says too little by a side.
    assertThat(of(joint(1, 2, off), joint(2, 3, 0)).orElseThrow().turnedOver()).isFalse();
  }

  /** Two birds that face each other, each of one colour. */
  @Test
  void mirrorImagesThatComeNearNothingAreDrawnApart() {
    assertThat(of(joint(1, 3, 0, 1, 400, 20, 1, 390)).orElseThrow().turnedOver()).isFalse();
  }

  /** Two of three lie as they do; the third is 5 mm off both, along a side or two. */
  @Test
  void aMoveThatTwoOthersAskForIsToldWithoutAnOutline() {
    FilmFit off = fit(5, 1, 1000, 300, 450, 1.8, 0, 0);
    assertThat(of(joint(1, 2, off), joint(1, 3, off), joint(2, 3, 0)).orElseThrow().liesOff())
        .isTrue();
    assertThat(of(joint(1, 2, off), joint(2, 3, 0)).orElseThrow().liesOff()).isFalse();
  }

  /** What was to lie between the two others may be what is off. */
  @Test
  void groundBetweenOthersFollowsFromAFilmThatLiesOff() {
    FilmOnOthers outline = of(joint(1, 2, 0), joint(1, 3, -5), joint(2, 3, -5)).orElseThrow();
    assertThat(outline.upsets("p3", "p1")).isTrue();
    assertThat(outline.upsets("p1", "p2")).isFalse();
    assertThat(outline.leavesBare("p1", "p2")).isTrue();
    assertThat(outline.leavesBare("p1", "p4")).isFalse();
    assertThat(of(joint(1, 2, 0), joint(1, 3, 0)).orElseThrow().leavesBare("p1", "p2")).isFalse();
  }

  @Test
  void ofFilmsThatMeetNowhereNothingIsKnown() {
    assertThat(of()).isEmpty();
  }
}
