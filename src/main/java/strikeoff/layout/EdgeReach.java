package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Cloth;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * Images of one arrangement that reach into the strip along an edge of the cloth that holds no
 * needed image, or past the edge. One fact for an arrangement and an edge, however many placements.
 *
 * @param edge {@code start}, {@code end}, {@code near edge} or {@code far edge}
 * @param placements those that reach into the strip, as people call them
 * @param count how many they are
 * @param beyond how far the furthest reaches past the edge; zero if none does
 * @param intoSelvedge how far into the selvedge, counted from its inner side; zero if not
 * @param into how far into the whole strip, selvedge and allowance; above zero
 * @param selvedge its width along this edge; zero at the ends
 * @param allowance seam, hem or cutting allowance along this edge, without the selvedge
 */
public record EdgeReach(
    String arrangement,
    String edge,
    String placements,
    int count,
    Length beyond,
    Length intoSelvedge,
    Length into,
    Length selvedge,
    Length allowance,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public EdgeReach {
    marks = List.copyOf(marks);
  }

  static List<EdgeReach> of(PrintPlan plan, Layout layout) {
    List<EdgeReach> reaches = new ArrayList<>();
    Cloth cloth = plan.cloth();
    Length none = new Length(0);
    for (Map.Entry<String, List<Placement>> arranged : layout.arrangements().entrySet()) {
      PlanPath path = plan.arrangements().get(arranged.getKey()).path();
      if (!cloth.closed()) {
        Strip start = new Strip("start", none, cloth.startAllowance());
        add(reaches, layout, arranged, path, start, Envelope::getMinX);
        Strip end = new Strip("end", none, cloth.endAllowance());
        double length = cloth.length().mm();
        add(reaches, layout, arranged, path, end, image -> length - image.getMaxX());
      }
      Strip near = new Strip("near edge", cloth.selvedge(), cloth.nearAllowance());
      add(reaches, layout, arranged, path, near, Envelope::getMinY);
      Strip far = new Strip("far edge", cloth.selvedge(), cloth.farAllowance());
      double width = cloth.width().mm();
      add(reaches, layout, arranged, path, far, image -> width - image.getMaxY());
    }
    return reaches;
  }

  private static void add(
      List<EdgeReach> reaches,
      Layout layout,
      Map.Entry<String, List<Placement>> arranged,
      PlanPath path,
      Strip strip,
      FromEdge fromEdge) {
    double inner = strip.selvedge.mm() + strip.allowance.mm();
    double nearest = Double.POSITIVE_INFINITY;
    List<Placement> inside = new ArrayList<>();
    for (Placement placement : arranged.getValue()) {
      double distance = Double.POSITIVE_INFINITY;
      for (Footprint footprint : layout.footprintsOf(placement.id())) {
        distance = Math.min(distance, fromEdge.of(footprint.image().getEnvelopeInternal()));
      }
      if (distance < inner - Tube.ROUNDING) {
        inside.add(placement);
        nearest = Math.min(nearest, distance);
      }
    }
    if (!inside.isEmpty()) {
      reaches.add(
          new EdgeReach(
              arranged.getKey(),
              strip.edge,
              Numbering.places(inside),
              inside.size(),
              above(-nearest),
              above(strip.selvedge.mm() - nearest),
              above(inner - nearest),
              strip.selvedge,
              strip.allowance,
              inside.stream().map(Placement::name).toList(),
              path));
    }
  }

  private static Length above(double mm) {
    return new Length(mm < Tube.ROUNDING ? 0 : mm);
  }

  private record Strip(String edge, Length selvedge, Length allowance) {}

  /** Distance of an image's furthest side from an edge, mm; below zero past the edge. */
  private interface FromEdge {
    double of(Envelope image);
  }
}
