package strikeoff.report.drawing;

import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.PrintPlan;

/**
 * The whole cloth, small, with the placements of one job filled and numbered: for whoever has to
 * find them on the table. The start lies at the left, the near edge below.
 */
public final class StepMap {

  /** The drawing's height may be so much of its length, so that a square cloth stays small. */
  private static final double HIGHEST = 0.22;

  private static final double LENGTH = 1000;

  /** Smaller numbers are read by nobody; the list below has them. */
  private static final double SMALLEST = 18;

  private StepMap() {}

  /**
   * @param printed ids of the job's placements
   */
  public static Svg of(PrintPlan plan, Layout layout, Set<Integer> printed) {
    double length = plan.cloth().length().mm();
    double width = plan.cloth().width().mm();
    double scale = Math.min(LENGTH / length, HIGHEST * LENGTH / width);
    Svg map =
        Svg.window(-4, -4, length * scale + 8, width * scale + 8)
            .with("class", "map")
            .with("preserveAspectRatio", "xMinYMid")
            .with("role", "img")
            .with("aria-label", "Where it is printed on the cloth, the start at the left");
    map.add(Svg.rect(0, 0, length * scale, width * scale).with("class", "cloth"));
    for (Placement placement : layout.placements()) {
      boolean own = printed.contains(placement.id());
      map.add(Svg.path(outline(placement, scale, width)).with("class", own ? "own" : "other"));
    }
    for (Placement placement : layout.placements()) {
      Envelope at = placement.outline().getEnvelopeInternal();
      double letter = Math.min(44, 0.6 * Math.min(at.getHeight(), at.getWidth()) * scale);
      if (printed.contains(placement.id()) && letter >= SMALLEST) {
        map.add(
            Svg.text(
                    at.centre().x * scale,
                    (width - at.centre().y) * scale + 0.35 * letter,
                    Integer.toString(placement.number()))
                .with("font-size", letter)
                .with("text-anchor", "middle"));
      }
    }
    return map;
  }

  private static String outline(Placement placement, double scale, double width) {
    StringBuilder path = new StringBuilder();
    for (Coordinate corner : placement.outline().getCoordinates()) {
      path.append(path.isEmpty() ? 'M' : 'L')
          .append(Svg.pair(corner.x * scale, (width - corner.y) * scale));
    }
    return path.append('Z').toString();
  }
}
