package strikeoff.report.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import strikeoff.plan.Traced;

/** What a film prints as path data of whole numbers, and as a geometry in millimetres. */
final class TracedPath {

  private static final GeometryFactory SHAPES = new GeometryFactory();

  private TracedPath() {}

  /** The rings as a path in steps, each corner from the one before: half as long as by places. */
  static String of(Traced traced) {
    return of(List.of(traced.rings()));
  }

  /** The same of a geometry whose corners lie on a grid. */
  static String of(Geometry shape, double step) {
    List<int[]> rings = new ArrayList<>();
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      if (shape.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        rings.add(ring(polygon.getExteriorRing(), step));
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          rings.add(ring(polygon.getInteriorRingN(hole), step));
        }
      }
    }
    return of(rings);
  }

  private static int[] ring(LinearRing line, double step) {
    int corners = line.getNumPoints() - 1;
    int[] ring = new int[2 * corners];
    for (int i = 0; i < corners; i++) {
      ring[2 * i] = (int) Math.round(line.getCoordinateN(i).x / step);
      ring[2 * i + 1] = (int) Math.round(line.getCoordinateN(i).y / step);
    }
    return ring;
  }

  private static String of(List<int[]> rings) {
    StringBuilder path = new StringBuilder();
    int x = 0;
    int y = 0;
    for (int[] ring : rings) {
      if (ring.length < 6) {
        continue;
      }
      path.append('m');
      append(path, ring[0] - x, ring[1] - y);
      x = ring[0];
      y = ring[1];
      int lastX = x;
      int lastY = y;
      for (int i = 2; i < ring.length; i += 2) {
        append(path.append(' '), ring[i] - lastX, ring[i + 1] - lastY);
        lastX = ring[i];
        lastY = ring[i + 1];
      }
      // It closes to where it began.
      path.append('z');
    }
    return path.toString().replace(" -", "-");
  }

  private static void append(StringBuilder path, int x, int y) {
    path.append(x).append(' ').append(y);
  }

  /**
   * What the rings go round.
   *
   * @param x where the film's left edge lies
   * @param y where its far edge lies, downwards
   */
  static Geometry shape(Traced traced, double x, double y) {
    int[][] rings = traced.rings();
    long sum = 0;
    for (int[] ring : rings) {
      sum += Traced.twiceArea(ring);
    }
    List<LinearRing> outer = new ArrayList<>();
    List<LinearRing> holes = new ArrayList<>();
    for (int[] ring : rings) {
      if (ring.length >= 6) {
        (Traced.twiceArea(ring) > 0 == sum > 0 ? outer : holes).add(line(ring, traced, x, y));
      }
    }
    List<List<LinearRing>> inside = new ArrayList<>();
    outer.forEach(ring -> inside.add(new ArrayList<>()));
    for (LinearRing hole : holes) {
      int around = around(hole, outer);
      if (around >= 0) {
        inside.get(around).add(hole);
      }
    }
    Polygon[] polygons = new Polygon[outer.size()];
    for (int i = 0; i < polygons.length; i++) {
      polygons[i] = SHAPES.createPolygon(outer.get(i), inside.get(i).toArray(LinearRing[]::new));
    }
    return GeometryFixer.fix(SHAPES.createMultiPolygon(polygons));
  }

  private static LinearRing line(int[] ring, Traced traced, double x, double y) {
    Coordinate[] corners = new Coordinate[ring.length / 2 + 1];
    for (int i = 0; i < corners.length; i++) {
      int at = 2 * i % ring.length;
      corners[i] = new Coordinate(x + ring[at] * traced.step(), y + ring[at + 1] * traced.step());
    }
    return SHAPES.createLinearRing(corners);
  }

  /** The smallest ring that a hole lies in; -1 if none is. */
  private static int around(LinearRing hole, List<LinearRing> rings) {
    Coordinate corner = hole.getCoordinateN(0);
    int around = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < rings.size(); i++) {
      Envelope box = rings.get(i).getEnvelopeInternal();
      if (box.getArea() < least
          && box.contains(hole.getEnvelopeInternal())
          && PointLocation.isInRing(corner, rings.get(i).getCoordinates())) {
        around = i;
        least = box.getArea();
      }
    }
    return around;
  }
}
