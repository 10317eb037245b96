package strikeoff.layout;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A rectangle along the cloth that is known as one: a plain polygon looks at all its corners each
 * time it is asked.
 */
final class Rectangle extends Polygon {

  private static final long serialVersionUID = 1;

  /**
   * @param corners of a rectangle along the axes, the first one again at the end
   */
  Rectangle(Coordinate[] corners, GeometryFactory factory) {
    super(factory.createLinearRing(corners), null, factory);
  }

  @Override
  public boolean isRectangle() {
    return true;
  }
}
