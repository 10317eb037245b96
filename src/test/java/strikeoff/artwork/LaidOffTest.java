package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import strikeoff.plan.Joint;
import strikeoff.units.Length;

/**
 * Films laid over each other, in register and off, against areas of the same shapes that JTS works
 * out: no code of ours.
 */
class LaidOffTest {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double SIDE = 120;

  private static Geometry disc(double radius) {
    return GEOMETRY.createPoint(new Coordinate(SIDE / 2, SIDE / 2)).buffer(radius, 64);
  }

  private static Bits bits(int perInch, Function<Double, Boolean> atRadius) {
    return new Drawn(SIDE, SIDE, perInch)
        .with((x, y) -> atRadius.apply(Math.hypot(x - SIDE / 2, y - SIDE / 2)))
        .bits();
  }

  /** What lies bare inside a round outline once it is moved along x, beside the colour in it. */
  private static double bare(Geometry colour, Geometry inOutline, double off) {
    return AffineTransformation.translationInstance(off, 0)
        .transform(inOutline)
        .difference(colour)
        .getArea();
  }

  private static Joint joint(TwoFilms films, int perInch, double off) {
    double point = 25.4 / perInch;
    return FilmJoints.of(
        films,
        FilmsNear.everywhere(films.columns(), films.rows()),
        point,
        point,
        Limited.by(5, off),
        new KnownEdges());
  }

  /** In mm². */
  private static double bareBeside(Bits colour, Bits outline, int perInch, double off) {
    return joint(TwoFilms.alone(colour, outline), perInch, off).ofOther().bare().squareCm() * 100;
  }

  /** It lets go of cloth on its far side, and of nothing between itself and the colour. */
  @ParameterizedTest
  @CsvSource({"49, 51.2, 0.9", "48.5, 51.5, 1", "47.5, 50.4, 2"})
  void anOutlineThatLapsByMoreThanTheToleranceOpensNothing(double from, double to, double off) {
    Bits outline = bits(300, r -> r >= from && r <= to);
    assertThat(bareBeside(bits(300, r -> r <= 50), outline, 300, off)).isZero();
  }

  /**
   * A thread as wide as the tolerance goes beyond the lap, where the outline moves outwards: on a
   * long edge that is the edge's length by {@code off cos t - lap}, integrated over the angle t,
   * however thin the outline is: what it opens it needn't have covered.
   */
  @ParameterizedTest
  @CsvSource({"0.2, 52", "0.5, 52", "0.8, 52", "0.2, 50.2", "0.5, 50.3", "0.1, 50.1"})
  void aThreadOpensAsWideAsTheToleranceGoesBeyondTheLap(double lap, double outer) {
    Bits outline = bits(600, r -> r >= 50 - lap && r <= outer);
    // A film moves by whole points.
    double rounded = 25.4 / 600 / Math.sqrt(2);
    assertThat(bareBeside(bits(600, r -> r <= 50), outline, 600, 1))
        .isBetween(thread(lap, 1 - rounded), thread(lap, 1 + rounded));
  }

  private static double thread(double lap, double off) {
    double most = Math.acos(lap / off);
    return 2 * 50 * (off * Math.sin(most) - lap * most);
  }

  /** The same lines over the same fill, each thinner than the one before. */
  @Test
  void theThinnerAnOutlineAstrideAnEdgeTheMoreLiesBare() {
    Bits colour = bits(300, r -> r <= 50);
    double before = 0;
    for (double wide : new double[] {2.2, 1.6, 1.2, 0.8, 0.4}) {
      Bits outline = bits(300, r -> Math.abs(r - 50) <= wide / 2);
      double bare = bareBeside(colour, outline, 300, 1);
      assertThat(bare).isGreaterThanOrEqualTo(before);
      before = bare;
    }
    assertThat(before).isCloseTo(bare(disc(50), disc(49.8), 1), within(before * 0.05));
  }

  /** An outline that ends opens nothing where it never lay. */
  @Test
  void colourBesideNoOutlineIsNotLaidBare() {
    Bits colour = new Drawn(SIDE, SIDE, 300).with((x, y) -> x <= 50).bits();
    Bits outline =
        new Drawn(SIDE, SIDE, 300).with((x, y) -> Math.abs(x - 50) <= 0.2 && y <= 40).bits();
    assertThat(bareBeside(colour, outline, 300, 1)).isCloseTo(40 * 0.8, within(2.0));
  }

  /** A disc of 54 mm, and a round line over it from 48 to 52 mm across: a rim of 1 mm. */
  @Test
  void aColourStandsOutPastALineOverIt() {
    Bits colour = bits(300, r -> r <= 27);
    Bits line = bits(300, r -> r >= 24 && r <= 26);
    Joint joint = joint(TwoFilms.alone(colour, line), 300, 1);
    Joint.Rim rim = joint.ofOne().rim().orElseThrow();
    assertThat(rim.width().mm()).isCloseTo(1, within(25.4 / 300));
    assertThat(rim.line().orElseThrow().mm()).isCloseTo(2, within(25.4 / 300));
    // As long as lengths of lines are known.
    assertThat(rim.over().mm()).isBetween(0.7 * 2 * Math.PI * 26.5, 1.2 * 2 * Math.PI * 26.5);
    assertThat(joint.ofOther().rim()).isEmpty();
    assertThat(joint(TwoFilms.alone(line, colour), 300, 1).ofOther().rim()).contains(rim);
    // A wash under all of it, or beside it, leaves no rim to see; nor does a line down the middle.
    Bits wash = bits(300, r -> r <= 40);
    assertThat(joint(new TwoFilms(colour, line, wash), 300, 1).ofOne().rim()).isEmpty();
    Bits around = bits(300, r -> r >= 27 && r <= 40);
    assertThat(joint(new TwoFilms(colour, line, around), 300, 1).ofOne().rim()).isEmpty();
    Bits stroke = new Drawn(SIDE, SIDE, 300).with(Drawn.bar(60, 60, 70, 4, 20)).bits();
    Bits middle = new Drawn(SIDE, SIDE, 300).with(Drawn.bar(60, 60, 80, 2, 20)).bits();
    assertThat(joint(TwoFilms.alone(stroke, middle), 300, 1).ofOne().rim()).isEmpty();
  }

  @Test
  void whatAThirdColourCoversIsNoGround() {
    Bits colour = bits(300, r -> r <= 50);
    Bits outline = bits(300, r -> r >= 49.52 && r <= 50.52);
    Bits wash = bits(300, r -> r <= 55);
    assertThat(bareBeside(colour, outline, 300, 1)).isGreaterThan(5);
    Joint over = joint(new TwoFilms(colour, outline, wash), 300, 1);
    assertThat(over.ofOther().bare().squareCm()).isZero();
  }

  /**
   * A disc of 100 mm with an outline of 1 mm that laps it by 0.48 mm, railed and by eye: the
   * heron's lap. Five in a hundred, as was studied.
   */
  @ParameterizedTest
  @CsvSource({"300, 1", "300, 2", "600, 1"})
  void anOutlineThatIsLaidOffLeavesGroundBare(int perInch, double off) {
    double point = 25.4 / perInch;
    Bits colour = bits(perInch, r -> r <= 50);
    Bits outline = bits(perInch, r -> r >= 49.52 && r <= 50.52);
    Joint joint =
        FilmJoints.of(
            TwoFilms.alone(colour, outline),
            FilmsNear.everywhere(colour.columns(), colour.rows()),
            point,
            point,
            Limited.by(5, off),
            new KnownEdges());
    assertThat(joint.lap().orElseThrow().width().mm()).isCloseTo(0.48, within(point));
    double exact = bare(disc(50), disc(49.52), off);
    assertThat(joint.ofOther().bare().squareCm() * 100).isCloseTo(exact, within(exact * 0.05));
  }

  @Test
  void whatTwoFilmsShareAndWhatLiesFurtherIn() {
    double point = 25.4 / 300;
    Bits under = bits(300, r -> r <= 40);
    Bits over = bits(300, r -> r >= 30 && r <= 50);
    Joint joint =
        FilmJoints.of(
            TwoFilms.alone(under, over),
            FilmsNear.everywhere(under.columns(), under.rows()),
            point,
            point,
            Limited.by(5, 1),
            new KnownEdges());
    double both = disc(40).difference(disc(30)).getArea() / 100;
    assertThat(joint.both().squareCm()).isCloseTo(both, within(both * 0.002));
    // A trap of 1 mm stays under the inner edge of what covers it.
    double inside = disc(40).difference(disc(31)).getArea() / 100;
    assertThat(joint.ofOne().inside().squareCm()).isCloseTo(inside, within(inside * 0.01));
    double back = disc(39).difference(disc(30)).getArea() / 100;
    assertThat(joint.ofOther().inside().squareCm()).isCloseTo(back, within(back * 0.01));
  }

  @Test
  void theSameFilmTwiceIsSharedAsAWhole() {
    Bits film = bits(150, r -> r <= 40);
    LaidOff laid =
        LaidOff.of(
            TwoFilms.alone(film, film),
            FilmsNear.everywhere(film.columns(), film.rows()),
            25.4 / 150,
            25.4 / 150,
            new Length(1));
    double all = film.count() * Math.pow(25.4 / 150, 2) / 100;
    assertThat(laid.both().squareCm()).isCloseTo(all, within(1e-9));
    assertThat(laid.one().bare().squareCm()).isZero();
  }

  /** Words of 64 points are cut and moved by any number of points, over both edges. */
  @Test
  void pointsAreFoundFromAnyColumnOn() {
    Bits bits = new Bits(150, 2);
    bits.set(0, 1);
    bits.set(70, 1);
    bits.set(149, 1);
    for (int from = -90; from < 170; from++) {
      long word = bits.from(from, 1);
      for (int i = 0; i < Long.SIZE; i++) {
        assertThat((word >>> i & 1) != 0).as("%d + %d", from, i).isEqualTo(bits.get(from + i, 1));
      }
    }
    assertThat(bits.from(0, 2)).isZero();
  }
}
