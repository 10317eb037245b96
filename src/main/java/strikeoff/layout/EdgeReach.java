package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Cloth;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * Images of one arrangement that reach into the strip along an edge of the cloth that holds no
 * needed image, or past the edge. One fact for an arrangement and an edge, however many placements.
 *
 * @param copies those that reach into the strip
 * @param count how many they are
 * @param beyond how far the furthest reaches past the edge; zero if none does
 * @param intoSelvedge how far into the selvedge, counted from its inner side; zero if not
 * @param into how far into the whole strip, selvedge and allowance; above zero
 * @param selvedge its width along this edge; zero at the ends
 * @param room how far the whole arrangement can move away from this edge until it reaches into the
 *     strip along the opposite one
 * @param allowance seam, hem or cutting allowance along this edge, without the selvedge
 * @param fitting of a series that is too long, how many fit or what pitch does; empty for others
 * @param runsOn true of a pattern that runs on past this edge: a fill, or a border at its ends
 */
public record EdgeReach(
    String arrangement,
    ClothEdge edge,
    Copies copies,
    int count,
    Length beyond,
    Length intoSelvedge,
    Length into,
    Length selvedge,
    Length allowance,
    Length room,
    Optional<Fitting> fitting,
    boolean runsOn,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public EdgeReach {
    marks = List.copyOf(marks);
  }

  private static boolean runsOn(Arrangement arrangement, ClothEdge edge) {
    return arrangement instanceof Arrangement.Fill
        || arrangement instanceof Arrangement.Border && edge.isEnd();
  }

  static List<EdgeReach> of(PrintPlan plan, Layout layout) {
    List<EdgeReach> reaches = new ArrayList<>();
    Cloth cloth = plan.cloth();
    Length none = new Length(0);
    for (Map.Entry<String, List<Placement>> arranged : layout.arrangements().entrySet()) {
      Arrangement arrangement = plan.arrangements().get(arranged.getKey());
      if (!cloth.closed()) {
        Strip start = new Strip(ClothEdge.START, none, cloth.startAllowance());
        FromEdge fromStart = Envelope::getMinX;
        Strip end = new Strip(ClothEdge.END, none, cloth.endAllowance());
        double length = cloth.length().mm();
        FromEdge fromEnd = image -> length - image.getMaxX();
        both(reaches, layout, arranged, arrangement, start, fromStart, end, fromEnd);
      }
      Strip near = new Strip(ClothEdge.NEAR, cloth.selvedge(), cloth.nearAllowance());
      Strip far = new Strip(ClothEdge.FAR, cloth.selvedge(), cloth.farAllowance());
      double width = cloth.width().mm();
      FromEdge fromFar = image -> width - image.getMaxY();
      both(reaches, layout, arranged, arrangement, near, Envelope::getMinY, far, fromFar);
    }
    return reaches;
  }

  /** Two opposite edges. */
  private static void both(
      List<EdgeReach> reaches,
      Layout layout,
      Map.Entry<String, List<Placement>> arranged,
      Arrangement arrangement,
      Strip first,
      FromEdge fromFirst,
      Strip second,
      FromEdge fromSecond) {
    double before = room(layout, arranged.getValue(), first, fromFirst);
    double after = room(layout, arranged.getValue(), second, fromSecond);
    add(reaches, layout, arranged, arrangement, first, fromFirst, after);
    add(reaches, layout, arranged, arrangement, second, fromSecond, before);
  }

  /** What is free between a whole arrangement and the strip along an edge, mm. */
  private static double room(
      Layout layout, List<Placement> placements, Strip strip, FromEdge fromEdge) {
    double free = Double.POSITIVE_INFINITY;
    for (Placement placement : placements) {
      free = Math.min(free, fromEdge.of(layout.printed(placement)));
    }
    return Double.isInfinite(free) ? 0 : free - strip.selvedge.mm() - strip.allowance.mm();
  }

  private static void add(
      List<EdgeReach> reaches,
      Layout layout,
      Map.Entry<String, List<Placement>> arranged,
      Arrangement arrangement,
      Strip strip,
      FromEdge fromEdge,
      double room) {
    double inner = strip.selvedge.mm() + strip.allowance.mm();
    double nearest = Double.POSITIVE_INFINITY;
    List<Placement> inside = new ArrayList<>();
    for (Placement placement : arranged.getValue()) {
      double distance = fromEdge.of(layout.printed(placement));
      if (distance < inner - Length.TOLERANCE) {
        inside.add(placement);
        nearest = Math.min(nearest, distance);
      }
    }
    if (!inside.isEmpty()) {
      reaches.add(
          new EdgeReach(
              arranged.getKey(),
              strip.edge,
              Copies.of(inside),
              inside.size(),
              above(-nearest),
              above(strip.selvedge.mm() - nearest),
              above(inner - nearest),
              strip.selvedge,
              strip.allowance,
              new Length(room),
              strip.edge.isEnd() && arrangement instanceof Arrangement.Series series
                  ? fitting(series, inner - nearest - Math.max(0, room), inside.get(0))
                  : Optional.empty(),
              runsOn(arrangement, strip.edge),
              inside.stream().map(Placement::name).toList(),
              arrangement.path()));
    }
  }

  /**
   * How many of a series fit, and the pitch at which all do, if that is no shorter than a motif.
   */
  private static Optional<Fitting> fitting(Arrangement.Series series, double over, Placement one) {
    int fewer = (int) Math.ceil((over - Length.TOLERANCE) / series.pitch().mm());
    int left = series.count() - fewer;
    if (over <= Length.TOLERANCE || left < 1) {
      return Optional.empty();
    }
    double pitch = series.pitch().mm() - over / Math.max(1, series.count() - 1);
    double motif = one.outline().getEnvelopeInternal().getWidth();
    return Optional.of(
        new Fitting(
            series.name(),
            left,
            series.count(),
            pitch >= motif ? Optional.of(new Length(pitch)) : Optional.empty()));
  }

  /**
   * How a series fits.
   *
   * @param left copies that fit at its pitch
   * @param pitch at which all of them do; empty if copies so close would overlap
   */
  public record Fitting(String series, int left, int count, Optional<Length> pitch) {}

  private static Length above(double mm) {
    return new Length(mm < Length.TOLERANCE ? 0 : mm);
  }

  private record Strip(ClothEdge edge, Length selvedge, Length allowance) {}

  /**
   * Distance of the furthest side of what is printed from an edge, mm; below zero past the edge.
   */
  private interface FromEdge {
    double of(Envelope printed);
  }
}
