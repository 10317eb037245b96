package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.artwork.Drawn.Shape;
import strikeoff.checks.Draws;
import strikeoff.plan.Artwork.Tone;
import strikeoff.plan.Joint;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/** Joints of figures that anybody can work out, by plain geometry. */
class FilmJointsTest {

  private static final double POINT = 25.4 / 600;
  private static final Length STRIP = new Length(5);
  private static final JointLimits LIMITS = Limited.by(5, 1);

  private static Bits bits(Shape shape) throws Exception {
    Drawn drawn = new Drawn(26, 26, 600).with(shape);
    Picture picture = Drawn.picture(drawn.png());
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    return open.bits();
  }

  private static Joint joint(Bits one, Bits other) {
    return joint(one, other, STRIP);
  }

  private static Joint joint(TwoFilms films) {
    FilmsNear all = FilmsNear.everywhere(films.columns(), films.rows());
    return FilmJoints.of(films, all, POINT, POINT, LIMITS, new KnownEdges());
  }

  private static Joint joint(Bits one, Bits other, Length strip) {
    return FilmJoints.of(
        TwoFilms.alone(one, other),
        where(one, other),
        POINT,
        POINT,
        Limited.by(strip.mm(), 1),
        new KnownEdges());
  }

  private static double butt(Joint joint) {
    return joint.butt().orElseThrow().over().mm();
  }

  /** By cells, as plans do. */
  private static FilmsNear where(Bits one, Bits other) {
    Pair size = new Pair(new Length(one.columns() * POINT), new Length(one.rows() * POINT));
    return FilmsNear.of(
        CellCount.of(one, size, false),
        CellCount.of(other, size, false),
        one.columns(),
        one.rows(),
        4);
  }

  /** Two fields of 6 x 8 mm side by side, at a turn, so far over each other. */
  private static Joint fields(double lap, double degrees) throws Exception {
    double out = 3 - lap / 2;
    double x = out * Math.cos(Math.toRadians(degrees));
    double y = out * Math.sin(Math.toRadians(degrees));
    return joint(
        bits(Drawn.bar(13.01 - x, 13.02 - y, 6, 8, degrees)),
        bits(Drawn.bar(13.01 + x, 13.02 + y, 6, 8, degrees)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 17, 45, 61, 90})
  void aLapIsATrap(double degrees) throws Exception {
    Joint joint = fields(0.8, degrees);
    assertThat(joint.lap().orElseThrow().width().mm()).isBetween(0.8 - POINT, 0.8 + POINT);
    assertThat(joint.gap()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 17, 45, 61, 90})
  void groundBetweenThemIsAGap(double degrees) throws Exception {
    Joint joint = fields(-0.3, degrees);
    assertThat(joint.gap().orElseThrow().width().mm()).isBetween(0.3 - POINT, 0.3 + POINT);
    assertThat(joint.lap()).isEmpty();
    assertThat(joint.butt()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 90})
  void fieldsThatTouchButt(double degrees) throws Exception {
    // On the points' own grid, so that neither a lap nor a gap comes of rounding.
    double edge = 300 * POINT;
    boolean upright = degrees == 0;
    Joint joint =
        joint(
            bits((x, y) -> in(upright ? x : y, edge - 6, edge) && in(upright ? y : x, 9, 17)),
            bits((x, y) -> in(upright ? x : y, edge, edge + 6) && in(upright ? y : x, 9, 17)));
    assertThat(butt(joint)).isBetween(8 * 0.95, 8 * 1.05);
    assertThat(joint.lap()).isEmpty();
    assertThat(joint.gap()).isEmpty();
  }

  /**
   * A ring of 2 mm round a disc of 16 mm that touches it, reaches under it by half a point or stays
   * as far off: its edge is 16 π long.
   */
  @ParameterizedTest
  @ValueSource(doubles = {-0.5, 0, 0.5})
  void anOutlineThatKissesADiscButtsAllRound(double points) throws Exception {
    Shape inside = Drawn.disc(13.003, 13.007, 16 - 2 * points * POINT);
    Shape outside = Drawn.disc(13.003, 13.007, 20);
    Joint joint =
        joint(
            bits(Drawn.disc(13.003, 13.007, 16)),
            bits((x, y) -> outside.covers(x, y) && !inside.covers(x, y)));
    assertThat(butt(joint)).isBetween(16 * Math.PI * 0.95, 16 * Math.PI * 1.05);
    assertThat(joint.lap()).isEmpty();
    assertThat(joint.gap()).isEmpty();
    double x = joint.butt().orElseThrow().x().mm() - 13.003;
    double y = joint.butt().orElseThrow().y().mm() - (26 - 13.007);
    assertThat(Math.hypot(x, y)).isBetween(8 - 2 * POINT, 8 + 2 * POINT);
  }

  /** Here and there it is taken for an edge: it is a lap, and told as one alone. */
  @ParameterizedTest
  @ValueSource(doubles = {-1.5, 1.5})
  void aLapOrGapOfAPointAndAHalfIsNotToldAsAnEdgeBesides(double points) throws Exception {
    Shape inside = Drawn.disc(13.003, 13.007, 16 - 2 * points * POINT);
    Shape outside = Drawn.disc(13.003, 13.007, 20);
    Joint joint =
        joint(
            bits(Drawn.disc(13.003, 13.007, 16)),
            bits((x, y) -> outside.covers(x, y) && !inside.covers(x, y)));
    assertThat(joint.butting().mm()).isZero();
    assertThat(points > 0 ? joint.lap() : joint.openGap()).isPresent();
  }

  /** The same ring over the disc by 0.4 mm, and by 0.4 mm too far. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.4, 0.4})
  void whatLapsOrGapesIsNoButt(double lap) throws Exception {
    Shape inside = Drawn.disc(13.003, 13.007, 16 - 2 * lap);
    Shape outside = Drawn.disc(13.003, 13.007, 20 - 2 * lap);
    Joint joint =
        joint(
            bits(Drawn.disc(13.003, 13.007, 16)),
            bits((x, y) -> outside.covers(x, y) && !inside.covers(x, y)));
    assertThat(joint.butt()).isEmpty();
    if (lap > 0) {
      double wide = joint.ofOther().wide().orElseThrow().mm();
      assertThat(wide).isBetween(2 - 1.5 * POINT, 2 + 1.5 * POINT);
      assertThat(joint.ofOne().wide()).isEmpty();
    }
  }

  private static boolean in(double at, double from, double to) {
    return at > from && at < to;
  }

  @Test
  void anOutlineOverAColourIsNoTrapButOneAstrideItsEdgeIs() throws Exception {
    Shape field = Drawn.bar(13, 13, 12, 12, 0);
    Joint over = joint(bits(field), bits(Drawn.bar(13, 13, 8, 0.8, 30)));
    assertThat(over.lap()).isEmpty();
    // 1 mm wide, of which 0.48 mm lie on the field.
    Joint astride = joint(bits(field), bits(Drawn.bar(7.0 - 0.02, 13, 1, 10, 0)));
    assertThat(astride.lap().orElseThrow().width().mm()).isBetween(0.48 - POINT, 0.48 + POINT);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 10, 20, 30, 45, 60, 80, 90})
  void anEdgeIsAsLongAtEachTurn(double degrees) throws Exception {
    double x = Math.cos(Math.toRadians(degrees));
    double y = Math.sin(Math.toRadians(degrees));
    Shape field = Drawn.bar(13.003, 13.007, 8, 8, degrees);
    Shape left = (a, b) -> (a - 13.003) * x + (b - 13.007) * y < 0;
    Joint joint =
        joint(
            bits((a, b) -> field.covers(a, b) && left.covers(a, b)),
            bits((a, b) -> field.covers(a, b) && !left.covers(a, b)));
    assertThat(butt(joint)).isBetween(8 * 0.95, 8 * 1.05);
  }

  /** Two fields 0.6 mm apart, or edge to edge, with a third colour over what lies between. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 30, 90})
  void whereAThirdColourPrintsBetweenTwoThereIsNoGround(double degrees) throws Exception {
    Bits third = bits(Drawn.bar(13.01, 13.02, 3, 12, degrees));
    double x = 3.3 * Math.cos(Math.toRadians(degrees));
    double y = 3.3 * Math.sin(Math.toRadians(degrees));
    Bits left = bits(Drawn.bar(13.01 - x, 13.02 - y, 6, 8, degrees));
    Bits right = bits(Drawn.bar(13.01 + x, 13.02 + y, 6, 8, degrees));
    assertThat(joint(left, right).gap()).isPresent();
    assertThat(joint(new TwoFilms(left, right, third)).gap()).isEmpty();
    Bits half = bits((a, b) -> left.get((int) (a / POINT), (int) (b / POINT)) || a < 0);
    assertThat(joint(new TwoFilms(left, right, half)).gap()).isPresent();
  }

  @Test
  void anEdgeUnderAThirdColourIsNoButt() throws Exception {
    double edge = 300 * POINT;
    Bits left = bits((x, y) -> in(x, edge - 6, edge) && in(y, 9, 17));
    Bits right = bits((x, y) -> in(x, edge, edge + 6) && in(y, 9, 17));
    Bits line = bits((x, y) -> in(x, edge - 1, edge + 1) && in(y, 8, 18));
    assertThat(butt(joint(left, right))).isGreaterThan(7);
    assertThat(joint(new TwoFilms(left, right, line)).butt()).isEmpty();
  }

  /** The same two fields on films of 600 and of 300 points an inch: known to the coarser point. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 20, 45})
  void aCoarserFilmIsLaidOnTheGridOfTheFinerOne(double degrees) throws Exception {
    double out = 2.6;
    double x = out * Math.cos(Math.toRadians(degrees));
    double y = out * Math.sin(Math.toRadians(degrees));
    Bits fine = bits(Drawn.bar(13.01 - x, 13.02 - y, 6, 8, degrees));
    Bits same = bits(Drawn.bar(13.01 + x, 13.02 + y, 6, 8, degrees));
    Bits coarse = same.on(same.columns() / 2, same.rows() / 2);
    TwoFilms films = TwoFilms.alone(fine, coarse.on(fine.columns(), fine.rows()));
    assertThat(films.columns()).isEqualTo(fine.columns());
    assertThat(joint(films).lap().orElseThrow().width().mm())
        .isBetween(0.8 - 2 * POINT, 0.8 + 2 * POINT);
    // A side of 6 mm, to half a point of the coarser film.
    assertThat((double) films.other().count() / same.count()).isBetween(0.993, 1.007);
  }

  @Property(tries = 200, seed = Draws.ALIKE)
  void aFilmOnAnotherGridHasTheNearestPoint(
      @ForAll @IntRange(min = 1, max = 200) int columns,
      @ForAll @IntRange(min = 1, max = 9) int rows,
      @ForAll @IntRange(min = 1, max = 300) int toColumns,
      @ForAll @IntRange(min = 1, max = 20) int toRows,
      @ForAll long seed) {
    Random random = new Random(seed);
    Bits bits = new Bits(columns, rows);
    for (int i = 0; i < columns * rows / 2; i++) {
      bits.set(random.nextInt(columns), random.nextInt(rows));
    }
    Bits on = bits.on(toColumns, toRows);
    for (int y = 0; y < toRows; y++) {
      for (int x = 0; x < toColumns; x++) {
        int atX = (2 * x + 1) * columns / (2 * toColumns);
        int atY = (2 * y + 1) * rows / (2 * toRows);
        assertThat(on.get(x, y)).as("%d, %d", x, y).isEqualTo(bits.get(atX, atY));
      }
    }
  }

  @Test
  void linesThatCrossDoNotButt() throws Exception {
    Shape up = (x, y) -> (x + 0.3 * y) % 1.5 < 0.5;
    Shape down = (x, y) -> (x * 0.4 + y + 7) % 1.7 < 0.6;
    Joint joint = joint(bits(up), bits(down));
    assertThat(joint.butt()).isEmpty();
    assertThat(joint.gap()).isEmpty();
  }

  @Test
  void groundIsAGapFromThatLengthOnThatItIsToldToHave() throws Exception {
    Bits left = bits(Drawn.bar(10.01, 13.02, 6, 8, 0));
    Bits right = bits(Drawn.bar(16.51, 13.02, 6, 8, 0));
    assertThat(joint(left, right, new Length(7)).gap()).isPresent();
    // A stroke at any slope that is measured along the rows has that many rows.
    assertThat(joint(left, right, new Length(8 * Math.hypot(1, 1.2) + 1)).gap()).isEmpty();
  }

  @Test
  void aFilmSeenThroughItsBackIsTurnedRight() throws Exception {
    Drawn drawn = new Drawn(10.3, 4, 300).with(Drawn.bar(2, 2, 3, 2, 20));
    Picture picture = Drawn.picture(drawn.png());
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    Bits mirrored = open.bits().mirrored();
    for (int y = 0; y < drawn.rows(); y++) {
      for (int x = 0; x < drawn.columns(); x++) {
        assertThat(mirrored.get(x, y)).isEqualTo(drawn.isDark(drawn.columns() - 1 - x, y));
      }
    }
  }

  /** Bars and discs wherever they fall: looking only where cells meet finds the same. */
  @Property(tries = 60, seed = Draws.ALIKE)
  void whereCellsDoNotMeetThereIsNothingToFind(@ForAll long seed) {
    Random random = new Random(seed);
    Bits one = scattered(random);
    Bits other = scattered(random);
    Joint all =
        FilmJoints.of(
            TwoFilms.alone(one, other),
            FilmsNear.everywhere(one.columns(), one.rows()),
            0.1,
            0.1,
            LIMITS,
            new KnownEdges());
    Pair size = new Pair(new Length(one.columns() * 0.1), new Length(one.rows() * 0.1));
    FilmsNear where =
        FilmsNear.of(
            CellCount.of(one, size, false),
            CellCount.of(other, size, false),
            one.columns(),
            one.rows(),
            4);
    Joint near =
        FilmJoints.of(TwoFilms.alone(one, other), where, 0.1, 0.1, LIMITS, new KnownEdges());
    if (where.isNowhere()) {
      assertThat(FilmJoints.none(0.1, 0.1)).isEqualTo(near);
      // How films would fit that come near to each other nowhere isn't looked for.
      assertThat(near).usingRecursiveComparison().ignoringFields("fit").isEqualTo(all);
    } else {
      assertThat(near).isEqualTo(all);
    }
  }

  private static Bits scattered(Random random) {
    Drawn drawn = new Drawn(61.3, 47.7, 254);
    for (int i = 0; i < 3; i++) {
      drawn
          .with(
              Drawn.bar(
                  random.nextDouble() * 60,
                  random.nextDouble() * 46,
                  15,
                  random.nextDouble() * 5,
                  random.nextDouble() * 180))
          .with(
              Drawn.disc(
                  random.nextDouble() * 60, random.nextDouble() * 46, random.nextDouble() * 12));
    }
    return drawn.bits();
  }
}
