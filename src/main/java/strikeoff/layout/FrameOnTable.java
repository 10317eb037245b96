package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Table;
import strikeoff.units.Length;

/**
 * Whether all frames of one arrangement lie wholly on the table. The cloth is taken to lie flat on
 * it, its length along the table's, wherever that helps, and may hang over; nobody moves it across
 * while one arrangement is printed.
 *
 * @param screen whose frame needs most room
 * @param frameLength longest frame along the table, as it lies
 * @param frameWidth widest frame across it, as it lies
 * @param cloth width of the cloth
 * @param lacksLength how much longer the table would have to be; zero if long enough
 * @param lacksWidth how much wider; zero if wide enough
 * @param reachesFrom where across the cloth the frames begin; below zero if beyond its near edge
 * @param reachesTo where across the cloth they end
 */
public record FrameOnTable(
    String arrangement,
    String screen,
    Length frameLength,
    Length frameWidth,
    Length tableLength,
    Length tableWidth,
    Length cloth,
    Length lacksLength,
    Length lacksWidth,
    Length reachesFrom,
    Length reachesTo,
    PlanPath path,
    PlanPath tablePath)
    implements Evidence {

  static List<FrameOnTable> of(PrintPlan plan, Layout layout) {
    List<FrameOnTable> fits = new ArrayList<>();
    for (Map.Entry<String, List<Placement>> arranged : layout.arrangements().entrySet()) {
      // What lies beside the cloth is told as that, and no place of the cloth would help it.
      double width = plan.cloth().width().mm();
      List<Placement> onCloth =
          arranged.getValue().stream()
              .filter(p -> p.outline().getEnvelopeInternal().getMaxY() > 0)
              .filter(p -> p.outline().getEnvelopeInternal().getMinY() < width)
              .filter(p -> !layout.footprintsOf(p.id()).isEmpty())
              .toList();
      if (!onCloth.isEmpty()) {
        fits.add(of(plan, layout, arranged.getKey(), onCloth));
      }
    }
    return fits;
  }

  private static FrameOnTable of(
      PrintPlan plan, Layout layout, String arrangement, List<Placement> placements) {
    Envelope reach = new Envelope();
    double length = 0;
    double width = 0;
    String screen = "";
    for (Placement placement : placements) {
      for (Footprint footprint : layout.footprintsOf(placement.id())) {
        Envelope frame = footprint.frame().getEnvelopeInternal();
        if (Math.max(frame.getWidth(), frame.getHeight())
            > Math.max(length, width) + Length.TOLERANCE) {
          screen = footprint.screen().name();
        }
        length = Math.max(length, frame.getWidth());
        width = Math.max(width, frame.getHeight());
        reach.expandToInclude(frame);
      }
    }
    Table table = plan.table();
    // It may hang over a side: only the frames have to lie on the table, all at once.
    double lacksWidth = reach.getHeight() - table.width().mm();
    return new FrameOnTable(
        arrangement,
        screen,
        new Length(length),
        new Length(width),
        table.length(),
        table.width(),
        plan.cloth().width(),
        above(length - table.length().mm()),
        above(lacksWidth),
        new Length(reach.getMinY()),
        new Length(reach.getMaxY()),
        plan.arrangements().get(arrangement).path(),
        table.path());
  }

  private static Length above(double mm) {
    return new Length(mm < Length.TOLERANCE ? 0 : mm);
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.TABLE, tablePath));
  }

  /** Table length that would hold the frame. */
  public Length lengthNeeded() {
    return tableLength.plus(lacksLength);
  }

  /** Table width that would hold all frames of the arrangement. */
  public Length widthNeeded() {
    return tableWidth.plus(lacksWidth);
  }

  /** How far they reach from the nearest to the furthest, across the table. */
  public Length reach() {
    return reachesTo.minus(reachesFrom);
  }

  /** The larger of what is missing in length and in width. */
  public Length lacks() {
    return lacksLength.compareTo(lacksWidth) > 0 ? lacksLength : lacksWidth;
  }
}
