package strikeoff.report.drawing;

import java.util.List;
import strikeoff.plan.Colour;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;

/**
 * Films of a design on its ground, each by itself and all together; signs are used by their ids.
 */
public final class FilmDrawing {

  /** A ring's radius and its number's letters, as shares of the larger side. */
  private static final double RING = 0.025;

  private static final double LETTER = 0.045;

  private FilmDrawing() {}

  /** One film in its colour. */
  public static Svg film(
      ColourSigns signs, Design design, Separation colour, Colour ground, String words) {
    return sheet(design, ground, words).add(signs.alone(design, colour));
  }

  /** All films as they are printed over each other, with rings round what was found. */
  public static Svg together(
      ColourSigns signs, Design design, Colour ground, List<RingMark> rings, String words) {
    Svg sheet = sheet(design, ground, words);
    for (Separation colour : design.separations()) {
      sheet.add(Svg.use(signs.id(design.name(), colour.number())));
    }
    double large = Math.max(design.length().mm(), design.width().mm());
    for (RingMark ring : rings) {
      design.separations().stream()
          .filter(s -> isOf(ring, s))
          .findFirst()
          .ifPresent(s -> sheet.add(ring(ring, design, s, large)));
    }
    return sheet;
  }

  /** True if a ring lies on a separation's film. */
  public static boolean isOf(RingMark ring, Separation separation) {
    return ring.film().equals(separation.path())
        || ring.film().equals(separation.path().key("artwork"));
  }

  private static Svg ring(RingMark ring, Design design, Separation separation, double large) {
    double x = separation.x().plus(ring.place().x()).mm();
    double y = design.width().mm() - separation.y().plus(ring.place().y()).mm();
    double radius = large * RING;
    // The number stands where there is more room for it.
    double side = x < design.length().mm() / 2 ? 1 : -1;
    return Svg.of("g")
        .with("font-size", large * LETTER)
        .add(Svg.of("circle").with("cx", x).with("cy", y).with("r", radius).with("class", "halo"))
        .add(Svg.of("circle").with("cx", x).with("cy", y).with("r", radius).with("class", "ring"))
        .add(
            MarkShapes.mark(
                new Mark(ring.number(), ring.severity(), List.of()),
                x + side * (radius + large * LETTER),
                y));
  }

  private static Svg sheet(Design design, Colour ground, String words) {
    double length = design.length().mm();
    double width = design.width().mm();
    return Svg.window(0, 0, length, width)
        .with("class", "film")
        .with("role", "img")
        .with("aria-label", words)
        .add(Svg.rect(0, 0, length, width).with("fill", ground.hex()));
  }
}
