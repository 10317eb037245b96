package strikeoff.layout;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import strikeoff.plan.Artwork;
import strikeoff.plan.PrintedCells;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * How much of a print lies under a rectangle such as a frame, by the film of its separation, as it
 * is mirrored and turned on the cloth.
 */
public final class FilmUnder {

  private static final double SQUARE_MM_IN_CM = 100;

  /** Less than that is rounding, in cm²: it is smaller than any speck. */
  private static final double LEAST = 1e-4;

  private FilmUnder() {}

  /** True if some of what it prints lies there, by its film; without one, some of its image. */
  public static boolean lies(Footprint print, Geometry over, Tube tube) {
    return tube.overlaps(over, print.image())
        && of(print, over, tube).filter(FilmUnder::isNothing).isEmpty();
  }

  /** True of so small an area that it is rounding. */
  public static boolean isNothing(Area area) {
    return area.squareCm() <= LEAST;
  }

  /**
   * The area of it that prints there; empty without a film, and where that prints nothing.
   *
   * @param over a rectangle, turned or not
   */
  public static Optional<Area> of(Footprint print, Geometry over, Tube tube) {
    return print
        .separation()
        .artwork()
        .filter(artwork -> artwork.reach().isPresent())
        .map(Artwork::cells)
        .map(cells -> new Area(area(print, cells, over, tube) / SQUARE_MM_IN_CM));
  }

  private static double area(Footprint print, PrintedCells cells, Geometry over, Tube tube) {
    double area = 0;
    for (double shift : tube.shifts(print.image(), over)) {
      area += area(print, cells, over, shift);
    }
    return area;
  }

  /** Corners of an image come in turn from the separation's own left near one, on any turn. */
  private static double area(Footprint print, PrintedCells cells, Geometry over, double shift) {
    Coordinate[] image = print.image().getCoordinates();
    Coordinate[] corners = over.getCoordinates();
    double length = image[0].distance(image[1]);
    double width = image[0].distance(image[3]);
    double[] x = new double[corners.length - 1];
    double[] y = new double[corners.length - 1];
    Envelope reach = new Envelope();
    for (int i = 0; i < x.length; i++) {
      double fromX = corners[i].x + shift - image[0].x;
      double fromY = corners[i].y - image[0].y;
      x[i] = along(fromX, fromY, image[0], image[1], length);
      y[i] = along(fromX, fromY, image[0], image[3], width);
      reach.expandToInclude(x[i], y[i]);
    }
    boolean straight = reach.getArea() <= over.getArea() * (1 + 1e-9);
    if (straight
        && reach.getMinX() <= Length.TOLERANCE
        && reach.getMinY() <= Length.TOLERANCE
        && reach.getMaxX() >= length - Length.TOLERANCE
        && reach.getMaxY() >= width - Length.TOLERANCE) {
      return print.separation().printed().squareCm() * SQUARE_MM_IN_CM;
    }
    return cells.within(x, y);
  }

  private static double along(double x, double y, Coordinate from, Coordinate to, double length) {
    return (x * (to.x - from.x) + y * (to.y - from.y)) / length;
  }
}
