package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import strikeoff.plan.Design;
import strikeoff.plan.Screen;
import strikeoff.units.Angle;

/**
 * The shapes of one design as it is laid: mirrored along x if so, then turned. Places are those of
 * the lower left corner of what is then seen, the rectangle around the turned design. Shapes are
 * worked out once and moved to each placement. A separation's frame is laid so that the stencil's
 * image, which lies in the middle of its frame, is centred over the separation's image.
 */
final class Template {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final double length;
  private final double width;
  private final double cos;
  private final double sin;
  private final double middleX;
  private final double middleY;
  private final boolean mirrored;
  private final Coordinate[] outline;
  private final List<Coordinate[]> images = new ArrayList<>();
  private final List<Coordinate[]> frames = new ArrayList<>();
  private final Envelope bounds;
  private final boolean along;

  Template(Design design, Map<String, Screen> screens, Angle turn, boolean mirrored) {
    this.length = design.length().mm();
    this.width = design.width().mm();
    this.mirrored = mirrored;
    this.cos = turn.cos();
    this.sin = turn.sin();
    this.middleX = design.lengthTurned(turn).mm() / 2;
    this.middleY = design.widthTurned(turn).mm() / 2;
    this.outline = rectangle(0, 0, length, width);
    for (Design.Separation separation : design.separations()) {
      double x = separation.x().mm();
      double y = separation.y().mm();
      double sepLength = separation.length().mm();
      double sepWidth = separation.width().mm();
      images.add(rectangle(x, y, sepLength, sepWidth));
      Screen screen = screens.get(separation.screen());
      double frameLength = screen.frameLength().mm();
      double frameWidth = screen.frameWidth().mm();
      frames.add(
          rectangle(
              x + (sepLength - frameLength) / 2,
              y + (sepWidth - frameWidth) / 2,
              frameLength,
              frameWidth));
    }
    Polygon laid = GEOMETRY.createPolygon(outline);
    this.along = laid.isRectangle();
    this.bounds = laid.getEnvelopeInternal();
  }

  /** Length and width of the turned design; its lower left corner lies at 0, 0. */
  Envelope bounds() {
    return bounds;
  }

  /**
   * The least step along the cloth at which two copies share nothing: a turned design needs less
   * than its bounds, since its sides slant past each other.
   */
  double parts() {
    return Math.min(length / Math.abs(cos), width / Math.abs(sin));
  }

  Polygon outlineAt(double x, double y) {
    return moved(outline, x, y);
  }

  Polygon imageAt(int separation, double x, double y) {
    return moved(images.get(separation), x, y);
  }

  Polygon frameAt(int separation, double x, double y) {
    return moved(frames.get(separation), x, y);
  }

  private Coordinate[] rectangle(double x, double y, double rectLength, double rectWidth) {
    Coordinate first = laid(x, y);
    return new Coordinate[] {
      first,
      laid(x + rectLength, y),
      laid(x + rectLength, y + rectWidth),
      laid(x, y + rectWidth),
      first
    };
  }

  private Coordinate laid(double x, double y) {
    double alongX = (mirrored ? length - x : x) - length / 2;
    double alongY = y - width / 2;
    return new Coordinate(
        middleX + alongX * cos - alongY * sin, middleY + alongX * sin + alongY * cos);
  }

  private Polygon moved(Coordinate[] corners, double x, double y) {
    Coordinate[] moved = new Coordinate[corners.length];
    for (int i = 0; i < corners.length - 1; i++) {
      moved[i] = new Coordinate(corners[i].x + x, corners[i].y + y);
    }
    moved[corners.length - 1] = moved[0];
    return along ? new Rectangle(moved, GEOMETRY) : GEOMETRY.createPolygon(moved);
  }
}
