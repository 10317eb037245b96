package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.artwork.Drawn.Shape;
import strikeoff.document.Bounds;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Artwork.Tone;
import strikeoff.plan.Joint;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/** Films on parts of a design meet as the same films on all of it do. */
class LaidFilmsTest {

  private static final double SIDE = 60;

  /** 254 points an inch are ten a millimetre, so that parts of a film have its very points. */
  private static final int PER_INCH = 254;

  private static final Shape LEFT = Drawn.bar(20, 30, 20.8, 24, 0);
  private static final Shape RIGHT = Drawn.bar(40, 30, 20, 16, 0);
  private static final Shape APART = Drawn.bar(41, 31, 20.2, 14, 0);

  @TempDir private Path folder;

  /**
   * A part of the page.
   *
   * @param near from its near edge
   */
  private record Part(double x, double near, double length, double width) {

    static final Part ALL = new Part(0, 0, SIDE, SIDE);

    /** A picture's first row is the far one. */
    Drawn film(Shape shape, int perInch) {
      double top = SIDE - near - width;
      return new Drawn(length, width, perInch).with((a, b) -> shape.covers(a + x, b + top));
    }
  }

  private LaidFilm film(String name, Shape shape, Part part, int perInch) throws IOException {
    Files.write(folder.resolve(name), part.film(shape, perInch).png());
    Wanted wanted =
        new Wanted(
            name,
            Tone.DARK,
            false,
            Optional.empty(),
            new Length(0),
            new Pair(new Length(part.length()), new Length(part.width())));
    return new LaidFilm(wanted, new Length(part.x()), new Length(part.near()));
  }

  private Optional<Joint> joint(LaidFilm... films) throws IOException {
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(plan, "plan: it");
    Artworks artworks = Artworks.nowhere().beside(plan);
    int[] all = new int[films.length];
    Map<Integer, LaidFilm> byNumber = new HashMap<>();
    for (int i = 0; i < films.length; i++) {
      artworks.look(films[i].film(), Bounds.USUAL, BesidePlan.ALL_POINTS);
      byNumber.put(i + 1, films[i]);
      all[i] = i + 1;
    }
    return artworks.joints(byNumber, List.of(all), Limited.by(5, 1), Bounds.USUAL).stream()
        .findFirst();
  }

  private void alike(Shape one, Shape other, Part first, Part second) throws IOException {
    Joint whole =
        joint(film("a.png", one, Part.ALL, PER_INCH), film("b.png", other, Part.ALL, PER_INCH))
            .orElseThrow();
    Joint parts =
        joint(film("c.png", one, first, PER_INCH), film("d.png", other, second, PER_INCH))
            .orElseThrow();
    // Where a rectangle cuts a print off there is no edge.
    assertThat(parts.moved(zero(), zero(), zero(), zero()))
        .usingRecursiveComparison()
        .ignoringFields("fit")
        .isEqualTo(whole.moved(zero(), zero(), zero(), zero()));
    sameplace(parts.lap(), whole.lap(), second);
    sameplace(parts.gap(), whole.gap(), second);
  }

  private static Length zero() {
    return new Length(0);
  }

  /** Along a strip that is as wide all over, any place is as good. */
  private static void sameplace(Optional<Finest> part, Optional<Finest> whole, Part on) {
    assertThat(part.isPresent()).isEqualTo(whole.isPresent());
    if (part.isPresent()) {
      assertThat(part.get().x().mm() + on.x()).isCloseTo(whole.get().x().mm(), within(0.2));
    }
  }

  @Test
  void aPartOverTheWholeDesign() throws IOException {
    alike(LEFT, RIGHT, Part.ALL, new Part(25, 12, 30, 40));
    alike(LEFT, APART, Part.ALL, new Part(25, 12, 30, 40));
  }

  @Test
  void partsThatLieOverEachOther() throws IOException {
    alike(LEFT, RIGHT, new Part(0, 5, 35, 50), new Part(25, 12, 30, 40));
    alike(LEFT, APART, new Part(0, 5, 35, 50), new Part(25, 12, 30, 40));
  }

  @Test
  void partsThatOnlyTouch() throws IOException {
    alike(LEFT, APART, new Part(0, 5, 30.5, 50), new Part(30.5, 12, 29, 40));
  }

  @Test
  void partsFarFromEachOtherHaveNothingInCommon() throws IOException {
    Shape far = Drawn.bar(52, 30, 8, 8, 0);
    Joint joint =
        joint(
                film("a.png", LEFT, new Part(0, 0, 32, 60), PER_INCH),
                film("b.png", far, new Part(33, 0, 27, 60), PER_INCH))
            .orElseThrow();
    assertThat(joint.lap()).isEmpty();
    assertThat(joint.gap()).isEmpty();
    assertThat(joint.both().squareCm()).isZero();
    assertThat(joint.butt()).isEmpty();
  }

  /** Points of other sizes, and rectangles that begin between them: to a point of the coarser. */
  @Test
  void partsOfOtherResolutions() throws IOException {
    Joint joint =
        joint(
                film("a.png", LEFT, new Part(0, 5, 35, 50), 300),
                film("b.png", RIGHT, new Part(25.03, 12.02, 30, 40), 600))
            .orElseThrow();
    double point = 25.4 / 300;
    assertThat(joint.point().mm()).isCloseTo(point, within(1e-3));
    assertThat(joint.lap().orElseThrow().width().mm()).isCloseTo(0.4, within(point));
    // 0.4 by 16 mm.
    assertThat(joint.both().squareCm() * 100).isCloseTo(6.4, within(16 * point));
  }

  @Test
  void aThirdFilmOnAPartOfItsOwnCoversTheGround() throws IOException {
    LaidFilm one = film("a.png", LEFT, new Part(0, 5, 35, 50), PER_INCH);
    LaidFilm other = film("b.png", APART, new Part(25, 12, 30, 40), PER_INCH);
    assertThat(joint(one, other).orElseThrow().gap().orElseThrow().width().mm())
        .isCloseTo(0.5, within(0.11));
    LaidFilm third =
        film("c.png", Drawn.bar(30.6, 31, 3, 20, 0), new Part(20, 10, 20, 40), PER_INCH);
    assertThat(joint(one, other, third).orElseThrow().gap()).isEmpty();
  }
}
