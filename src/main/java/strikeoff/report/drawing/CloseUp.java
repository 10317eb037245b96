package strikeoff.report.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import strikeoff.plan.Colour;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.report.drawing.ColourSigns.Layer;
import strikeoff.report.drawing.ColourSigns.Patch;
import strikeoff.units.Length;

/**
 * A few centimetres of a design where two colours meet: as drawn, and with the later of them laid
 * off by as much as a frame can be, to the side where most ground shows near the other, or else
 * where they lap least.
 *
 * @param right how far it is laid off to the right in mm, to the left if negative
 * @param far the same towards the far edge
 */
public record CloseUp(Svg asDrawn, Svg laidOff, double right, double far) {

  /** Its window's sides, in mm. */
  public static final double SIDE = 50;

  /**
   * Of the scale bar, in mm: how thick it is, how far from the edge, and what is white round it.
   */
  private static final double BAR = 1;

  private static final double EDGE = 2;
  private static final double HALO = 0.5;

  /** Within so far of the middle a lap is looked at, in mm. */
  private static final double NEAR = 10;

  /** Edges are drawn as straight lines that are no further from where they are, in mm. */
  private static final double TOUCHING = 0.1;

  private static final GeometryFactory SHAPES = new GeometryFactory();

  /** Ways in which a frame can be off. */
  private static final int WAYS = 8;

  /**
   * @param x middle of the window, from the design's left edge in mm
   * @param y the same from its far edge, downwards
   * @param lower the colour that lies still
   * @param moved the colour whose frame is off
   * @param tolerance by how much
   * @param bar how long its scale bar is
   */
  public static CloseUp of(
      ColourSigns signs,
      Design design,
      Colour ground,
      double x,
      double y,
      Separation lower,
      Separation moved,
      Length tolerance,
      Length bar,
      String words) {
    Envelope window = new Envelope(x - SIDE / 2, x + SIDE / 2, y - SIDE / 2, y + SIDE / 2);
    Geometry square = SHAPES.toGeometry(window);
    List<Layer> whole = new ArrayList<>();
    for (Separation colour : design.separations()) {
      if (signs.pictures(design.name(), colour.number())) {
        whole.add(signs.layer(design, colour));
      }
    }
    List<Layer> drawn = cut(whole, moved, 0, 0, square);
    Geometry still = shape(drawn, lower);
    Geometry covered =
        ColourSigns.overlaid(covered(drawn), still.buffer(tolerance.mm()), OverlayNG.INTERSECTION);
    Geometry near = SHAPES.createPoint(new Coordinate(x, y)).buffer(NEAR);
    List<Layer> worst = List.of();
    double right = 0;
    double far = 0;
    double mostBare = -1;
    double leastLap = 0;
    for (int way = 0; way < WAYS; way++) {
      double angle = Math.PI * 2 * way / WAYS;
      double along = tolerance.mm() * StrictMath.cos(angle);
      double down = tolerance.mm() * StrictMath.sin(angle);
      List<Layer> off = cut(whole, moved, along, down, square);
      double bare =
          between(still, ColourSigns.overlaid(covered, covered(off), OverlayNG.DIFFERENCE));
      Geometry lapped = ColourSigns.overlaid(still, shape(off, moved), OverlayNG.INTERSECTION);
      double lap = ColourSigns.overlaid(lapped, near, OverlayNG.INTERSECTION).getArea();
      if (bare > mostBare || bare == mostBare && lap < leastLap) {
        mostBare = bare;
        leastLap = lap;
        worst = off;
        right = along;
        far = -down;
      }
    }
    return new CloseUp(
        drawn(signs, design, ground, window, drawn, bar, words + ", as drawn"),
        drawn(signs, design, ground, window, worst, bar, words + ", laid off"),
        right,
        far);
  }

  /** Area of the parts that begin at a colour: what the far side of a line lets go of does not. */
  private static double between(Geometry colour, Geometry bare) {
    double area = 0;
    for (int i = 0; i < bare.getNumGeometries(); i++) {
      Geometry part = bare.getGeometryN(i);
      area += part.isWithinDistance(colour, TOUCHING) ? part.getArea() : 0;
    }
    return area;
  }

  private static Geometry shape(List<Layer> layers, Separation colour) {
    return layers.stream()
        .filter(layer -> layer.colour().number() == colour.number())
        .map(Layer::shape)
        .findFirst()
        .orElseGet(SHAPES::createPolygon);
  }

  private static List<Layer> cut(
      List<Layer> layers, Separation moved, double x, double y, Geometry square) {
    List<Layer> cut = new ArrayList<>();
    for (Layer layer : layers) {
      boolean off = layer.colour().number() == moved.number() && (x != 0 || y != 0);
      Geometry shape =
          off
              ? AffineTransformation.translationInstance(x, y).transform(layer.shape())
              : layer.shape();
      Geometry here = ColourSigns.overlaid(shape, square, OverlayNG.INTERSECTION);
      if (!here.isEmpty()) {
        cut.add(new Layer(layer.colour(), here));
      }
    }
    return cut;
  }

  private static Geometry covered(List<Layer> layers) {
    Geometry all = SHAPES.createPolygon();
    for (Layer layer : layers) {
      all = ColourSigns.overlaid(all, layer.shape(), OverlayNG.UNION);
    }
    return all;
  }

  private static Svg drawn(
      ColourSigns signs,
      Design design,
      Colour ground,
      Envelope window,
      List<Layer> layers,
      Length bar,
      String words) {
    Svg drawn =
        Svg.window(window.getMinX(), window.getMinY(), window.getWidth(), window.getHeight())
            .with("class", "film")
            .with("role", "img")
            .with("aria-label", words)
            .add(
                Svg.rect(window.getMinX(), window.getMinY(), window.getWidth(), window.getHeight())
                    .with("fill", ground.hex()));
    for (int i = 0; i < layers.size(); i++) {
      for (Patch patch : signs.patches(design, layers.get(i), layers.subList(0, i))) {
        drawn.add(patch.drawn());
      }
    }
    double left = window.getMinX() + EDGE;
    double low = window.getMaxY() - EDGE;
    return drawn
        .add(
            Svg.rect(left - HALO, low - BAR - HALO, bar.mm() + 2 * HALO, BAR + 2 * HALO)
                .with("fill", "#ffffff"))
        .add(Svg.rect(left, low - BAR, bar.mm(), BAR).with("fill", "#000000"));
  }
}
