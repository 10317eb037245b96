package strikeoff.layout;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import strikeoff.evidence.FilmPlace;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.Paste;
import strikeoff.plan.Screen;

/**
 * What one separation of one placement covers.
 *
 * @param image rectangle on the cloth that takes paste, in millimetres
 * @param frame what the frame's outside covers; the stencil's image lies centred in the frame
 */
public record Footprint(
    Placement placement,
    Design.Separation separation,
    Screen screen,
    Paste paste,
    Geometry image,
    Geometry frame) {

  /** A placement has each separation once; outlines need not be asked for it. */
  @Override
  public int hashCode() {
    return 31 * placement.hashCode() + separation.number();
  }

  /**
   * What is printed lies in it: the convex outline around that, where its film tells, or else the
   * image.
   */
  public Geometry printed() {
    List<FilmPlace> outline = separation.artwork().map(Artwork::outline).orElse(List.of());
    if (outline.size() < 3) {
      return image;
    }
    // Corners of an image come in turn from the separation's own left near one, on any turn.
    Coordinate[] corners = image.getCoordinates();
    double length = separation.length().mm();
    double width = separation.width().mm();
    Coordinate[] ring = new Coordinate[outline.size() + 1];
    for (int i = 0; i < outline.size(); i++) {
      double along = outline.get(i).x().mm() / length;
      double across = outline.get(i).y().mm() / width;
      ring[i] =
          new Coordinate(
              between(corners[0].x, corners[1].x, corners[3].x, along, across),
              between(corners[0].y, corners[1].y, corners[3].y, along, across));
    }
    ring[outline.size()] = ring[0];
    return image.getFactory().createPolygon(ring);
  }

  /** What the frame covers between its rails. */
  public Geometry mesh() {
    Coordinate[] corners = frame.getCoordinates();
    double length = screen.insideLength().mm() / screen.frameLength().mm();
    double width = screen.insideWidth().mm() / screen.frameWidth().mm();
    Coordinate[] inside = new Coordinate[corners.length];
    for (int i = 0; i < corners.length - 1; i++) {
      double along = (1 + (i == 1 || i == 2 ? length : -length)) / 2;
      double across = (1 + (i == 2 || i == 3 ? width : -width)) / 2;
      inside[i] =
          new Coordinate(
              between(corners[0].x, corners[1].x, corners[3].x, along, across),
              between(corners[0].y, corners[1].y, corners[3].y, along, across));
    }
    inside[corners.length - 1] = inside[0];
    return frame.getFactory().createPolygon(inside);
  }

  private static double between(
      double at, double alongTo, double acrossTo, double along, double across) {
    return at + (alongTo - at) * along + (acrossTo - at) * across;
  }

  /** The same of a paste that is mixed otherwise. */
  public Footprint with(Paste other) {
    return new Footprint(placement, separation, screen, other, image, frame);
  }
}
