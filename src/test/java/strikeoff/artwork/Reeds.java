package strikeoff.artwork;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Reeds of 30 x 22 cm that lean both ways, as a film and as shapes whose areas JTS works out: no
 * code of ours. Millimetres from the left near corner.
 */
public final class Reeds {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double LENGTH = 300;
  private static final double WIDTH = 220;
  private static final int BLADES = 26;

  private final List<double[]> blades = new ArrayList<>();

  public Reeds() {
    for (int i = 0; i < BLADES; i++) {
      double foot = 4 + i * 11.3;
      double lean = 40 * Math.sin(i * 2.1);
      double top = 120 + 90 * Math.abs(Math.sin(i * 1.3));
      double tip = Math.max(2, Math.min(LENGTH - 2, foot + lean));
      blades.add(new double[] {foot - 3.4, 2, foot + 3.4, 2, tip + 0.9, top, tip - 0.9, top});
    }
  }

  /** The film of them. Its first row is the far one. */
  public Drawn film(int perInch) {
    Drawn film = new Drawn(LENGTH, WIDTH, perInch);
    for (double[] b : blades) {
      film.with((x, y) -> covers(b, x, WIDTH - y));
    }
    return film;
  }

  private static boolean covers(double[] blade, double x, double y) {
    for (int i = 0; i < blade.length; i += 2) {
      int next = (i + 2) % blade.length;
      double turn =
          (blade[next] - blade[i]) * (y - blade[i + 1])
              - (blade[next + 1] - blade[i + 1]) * (x - blade[i]);
      if (turn < 0) {
        return false;
      }
    }
    return true;
  }

  /** What of them lies in a shape, in cm². */
  public double within(Geometry shape) {
    Geometry all = GEOMETRY.createPolygon();
    for (double[] b : blades) {
      all = all.union(polygon(b));
    }
    return all.intersection(shape).getArea() / 100;
  }

  /** A shape by its corners in turn, x and y by turns. */
  public static Polygon polygon(double... corners) {
    Coordinate[] ring = new Coordinate[corners.length / 2 + 1];
    for (int i = 0; i < ring.length - 1; i++) {
      ring[i] = new Coordinate(corners[2 * i], corners[2 * i + 1]);
    }
    ring[ring.length - 1] = ring[0];
    return GEOMETRY.createPolygon(ring);
  }
}
