package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The films beside the examples of rules are drawn here. {@code -Dexample-films=write} draws them
 * anew.
 */
class ExampleFilmsTest {

  private static final int PER_INCH = 150;
  private static final double SIDE = 200;

  private static Drawn blank() {
    return new Drawn(SIDE, SIDE, PER_INCH);
  }

  private static Drawn leaf() {
    return blank().with(Drawn.leaf(100, 100, 190, 130));
  }

  private static Drawn veins() {
    Drawn drawn = blank().with(Drawn.bar(100, 100, 180, 3, 90));
    for (int y = 40; y < 160; y += 20) {
      drawn.with(Drawn.bar(118, y, 40, 2, -40)).with(Drawn.bar(82, y, 40, 2, 40));
    }
    return drawn;
  }

  /** A leaf that fades from dark to light, in eight bits. */
  private static byte[] wash() {
    Drawn leaf = leaf();
    byte[] raw = new byte[(leaf.columns() + 1) * leaf.rows()];
    for (int y = 0; y < leaf.rows(); y++) {
      for (int x = 0; x < leaf.columns(); x++) {
        int tone = leaf.isDark(x, y) ? y * 16 / leaf.rows() * 15 : 255;
        raw[y * (leaf.columns() + 1) + 1 + x] = (byte) tone;
      }
    }
    return Drawn.file(leaf.columns(), leaf.rows(), 8, 0, 0, raw, PER_INCH / 0.0254);
  }

  private static Drawn small(int perInch) {
    return new Drawn(50, 50, perInch);
  }

  private static byte[] halves(double gap) {
    return small(600)
        .with(Drawn.bar(15 - gap / 2, 25, 20, 30, 0))
        .with(Drawn.bar(35 + gap / 2, 25, 20, 30, 0))
        .png();
  }

  /** A field from so far to so far, at 254 points an inch, ten to the millimetre. */
  private static byte[] half(double from, double to) {
    return small(254).with((x, y) -> x > from && x < to && y > 8 && y < 42).png();
  }

  /** A round frame whose edges lie so far from its middle. */
  private static byte[] framed(double from, double to) {
    return new Drawn(60, 60, 254)
        .with((x, y) -> Math.hypot(x - 30, y - 30) >= from && Math.hypot(x - 30, y - 30) <= to)
        .png();
  }

  private static byte[] wedges(double degrees) {
    return small(600)
        .with(Drawn.wedge(12, 3, 42, degrees, 90))
        .with(Drawn.wedge(37, 4, 42, degrees, 88))
        .png();
  }

  private static byte[] dusty() {
    Drawn drawn = small(600).with(Drawn.disc(25, 25, 30));
    for (int i = 0; i < 7; i++) {
      drawn.with(Drawn.disc(3 + 6.3 * i, 4 + i % 2, 0.15));
    }
    return drawn.png();
  }

  private static byte[] shaded(int perCm) {
    Drawn.Shape leaf = Drawn.leaf(25, 25, 46, 30);
    Drawn.Shape dots = Drawn.halftone(perCm, 45, (x, y) -> 0.1 + x / 60);
    return small(300).with((x, y) -> leaf.covers(x, y) && dots.covers(x, y)).png();
  }

  private static byte[] line(int perInch) {
    return small(perInch).with(Drawn.bar(25, 25, 40, 0.6, 0)).png();
  }

  private static Map<String, byte[]> films() {
    Map<String, byte[]> films = new TreeMap<>();
    byte[] leaf = leaf().png();
    for (String rule :
        new String[] {
          "nothing-prints",
          "continuous-tone",
          "wrong-scale",
          "scale-slightly-off",
          "films-differ-in-size",
          "states-otherwise",
          "states-somewhat-otherwise"
        }) {
      films.put(rule + "/leaf.png", leaf);
    }
    films.put("nothing-prints/empty.png", blank().png());
    films.put("continuous-tone/wash.png", wash());
    films.put("wrong-scale/fitted.png", leaf().pngScaled(0.98));
    films.put("scale-slightly-off/short.png", leaf().pngScaled(0.996));
    films.put("films-differ-in-size/short.png", leaf().pngScaled(0.996));
    films.put("films-differ-in-size/long.png", veins().pngScaled(1.004));
    films.put("films-differ-in-size/veins.png", veins().png());
    films.put("gap-fills-in/narrow.png", halves(0.2));
    films.put("gap-fills-in/wide.png", halves(0.6));
    films.put("points-run-out/needles.png", wedges(5));
    films.put("points-run-out/blunt.png", wedges(20));
    films.put("specks/clean.png", small(600).with(Drawn.disc(25, 25, 30)).png());
    films.put("specks/dusty.png", dusty());
    films.put("halftone-too-fine/close.png", shaded(12));
    films.put("halftone-too-fine/open.png", shaded(10));
    films.put("film-too-coarse/coarse.png", line(150));
    films.put("film-too-coarse/fine.png", line(600));
    for (String rule :
        new String[] {"colours-do-not-meet", "colours-butt", "wide-lap", "hidden-under-opaque"}) {
      films.put(rule + "/left.png", half(5, 25));
      films.put(rule + "/lapped.png", half(23, 45));
    }
    films.put("colours-do-not-meet/apart.png", half(25.5, 45));
    films.put("colours-butt/touching.png", half(25, 45));
    films.put("states-another-width/line.png", line(600));
    films.put("wide-lap/far.png", half(20, 45));
    films.put("hidden-under-opaque/far.png", half(17, 45));
    leaves(films);
    underlays(films);
    silent(films);
    films.put("outline-too-thin/left.png", half(5, 25));
    films.put("outline-too-thin/thin.png", half(24.5, 25.5));
    films.put("outline-too-thin/wide.png", half(24, 26));
    films.put("colour-hardly-under-outline/left.png", half(5, 25));
    films.put("colour-hardly-under-outline/choked.png", half(5, 24.2));
    films.put("colour-hardly-under-outline/wide.png", half(24, 26));
    films.put("colour-past-outline/leaf.png", framed(0, 25));
    films.put("colour-past-outline/spread.png", framed(0, 27));
    films.put("colour-past-outline/outline.png", framed(24, 26));
    films.put("outline-misses-colours/left.png", half(5, 25));
    films.put("outline-misses-colours/choked.png", half(5, 24.2));
    films.put("outline-misses-colours/right.png", half(27, 45));
    films.put("outline-misses-colours/touching.png", half(28, 45));
    films.put("outline-misses-colours/outline.png", half(24, 28));
    return films;
  }

  /** The same motif on a page of 200 mm that came out at another scale, and says nothing of it. */
  private static byte[] silent(Drawn.Shape shape, double scale) {
    double side = SIDE * scale;
    return new Drawn(side, side, PER_INCH)
        .with((x, y) -> shape.covers(x / scale, y / scale))
        .pngSilent();
  }

  private static void silent(Map<String, byte[]> films) {
    Drawn.Shape leaf = Drawn.leaf(100, 100, 190, 130);
    Drawn.Shape rib = Drawn.bar(100, 100, 160, 4, 90);
    films.put("films-differ-in-points/leaf.png", silent(leaf, 1));
    films.put("films-differ-in-points/rib.png", silent(rib, 1));
    films.put("films-differ-in-points/small.png", silent(rib, 0.98));
  }

  private static final double PAGE = 160;

  private static Drawn page(Drawn.Shape shape) {
    return new Drawn(PAGE, PAGE, PER_INCH).with(shape);
  }

  /** A line of 3 mm round a leaf of 120 x 80 mm, of which it covers the edge. */
  private static Drawn.Shape outline(double x, double y) {
    Drawn.Shape outside = Drawn.leaf(x, y, 122, 82);
    Drawn.Shape inside = Drawn.leaf(x, y, 116, 76);
    return (along, across) -> outside.covers(along, across) && !inside.covers(along, across);
  }

  /** A line of 3 mm round a tile of 100 x 70 mm. */
  private static Drawn.Shape frame(double x, double y) {
    Drawn.Shape outside = Drawn.bar(x, y, 102, 72, 0);
    Drawn.Shape inside = Drawn.bar(x, y, 96, 66, 0);
    return (along, across) -> outside.covers(along, across) && !inside.covers(along, across);
  }

  /** Crosses of 8 mm with lines of half a millimetre, 5 mm from the corner's sides. */
  private static Drawn marked(Drawn film) {
    for (double x : new double[] {9, PAGE - 9}) {
      for (double y : new double[] {9, PAGE - 9}) {
        film.with(Drawn.bar(x, y, 8, 0.5, 0)).with(Drawn.bar(x, y, 8, 0.5, 90));
      }
    }
    return film;
  }

  /** A tile of 3 or 4 cm in a page of 5 cm, and the white under it. */
  private static void underlays(Map<String, byte[]> films) {
    Drawn.Shape white = Drawn.bar(25, 25, 28, 28, 0);
    for (String rule :
        new String[] {"colour-mostly-off-underlay", "underlay-past-colours", "underlay-hidden"}) {
      films.put(rule + "/yellow.png", tile(Drawn.bar(25, 25, 30, 30, 0)));
      films.put(rule + "/white.png", tile(white));
    }
    films.put("colour-mostly-off-underlay/negative.png", tile((x, y) -> !white.covers(x, y)));
    films.put("underlay-past-colours/spread.png", tile(Drawn.bar(25, 25, 34, 34, 0)));
    films.put("colour-off-underlay/yellow.png", tile(Drawn.bar(25, 25, 40, 40, 0)));
    films.put("colour-off-underlay/white.png", tile(Drawn.bar(25, 25, 38, 38, 0)));
    films.put("colour-off-underlay/short.png", tile(Drawn.bar(25, 20, 38, 28, 0)));
    films.put("same-picture-twice/one.png", tile(Drawn.bar(15, 25, 20, 40, 0)));
    films.put("same-picture-twice/copy.png", tile(Drawn.bar(15, 25, 20, 40, 0)));
    films.put("same-picture-twice/other.png", tile(Drawn.bar(34, 25, 20, 40, 0)));
  }

  private static byte[] tile(Drawn.Shape shape) {
    return new Drawn(50, 50, 300).with(shape).png();
  }

  private static void leaves(Map<String, byte[]> films) {
    Drawn.Shape leaf = Drawn.leaf(80, 80, 120, 80);
    Drawn.Shape outline = outline(80, 80);
    for (String rule : new String[] {"may-be-negative", "outline-negative", "marks-left-in"}) {
      films.put(rule + "/outline.png", page(outline).png());
    }
    films.put("marks-left-in/leaf.png", page(leaf).png());
    films.put("outline-negative/negative.png", page((x, y) -> !outline.covers(x, y)).png());
    films.put("may-be-negative/leaf.png", page(leaf).png());
    films.put("may-be-negative/negative.png", page((x, y) -> !leaf.covers(x, y)).png());
    films.put("marks-left-in/leaf-marked.png", marked(page(leaf)).png());
    films.put("marks-left-in/outline-marked.png", marked(page(outline)).png());
    films.put("film-lies-off/tile.png", page(Drawn.bar(80, 80, 100, 70, 0)).png());
    films.put("film-lies-off/outline.png", page(frame(80, 80)).png());
    films.put("film-lies-off/moved.png", page(frame(86, 86)).png());
  }

  @Test
  void filmsBesideExamplesAreThoseDrawnHere() throws IOException {
    for (Map.Entry<String, byte[]> film : films().entrySet()) {
      Path file = Path.of("rules/artwork", film.getKey());
      if ("write".equals(System.getProperty("example-films"))) {
        Files.write(file, film.getValue());
      }
      assertThat(Files.readAllBytes(file)).as(film.getKey()).isEqualTo(film.getValue());
    }
  }
}
