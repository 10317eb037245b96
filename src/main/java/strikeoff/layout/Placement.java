package strikeoff.layout;

import java.util.OptionalInt;
import org.locationtech.jts.geom.Geometry;
import strikeoff.document.PlanPath;
import strikeoff.units.Angle;
import strikeoff.units.Length;

/**
 * One copy of a design on the cloth.
 *
 * @param id its index in the layout's list
 * @param arrangement name of the arrangement it belongs to
 * @param number its number there, from 1
 * @param x lower left corner of what is seen: the rectangle around the turned design
 * @param y the same across
 * @param outline the turned rectangle, coordinates in millimetres on the cloth. On a closed cloth x
 *     may pass the length; the layout's overlap tests wrap it
 * @param anchor id of the placement it is set from, if any
 */
public record Placement(
    int id,
    String arrangement,
    int number,
    String design,
    Length x,
    Length y,
    Angle turn,
    boolean mirrored,
    Geometry outline,
    OptionalInt anchor,
    PlanPath path) {

  /** By its number alone, which no other one of the plan has. */
  @Override
  public int hashCode() {
    return id;
  }

  /** As people say it: {@code herons 3}. */
  public String name() {
    return arrangement + " " + number;
  }
}
