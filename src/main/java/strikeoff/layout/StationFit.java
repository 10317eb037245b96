package strikeoff.layout;

import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Table;
import strikeoff.units.Length;

/**
 * The frames that are laid on stations, against the stations' size. Length and width may come from
 * two different screens; each is the largest, as the frame lies.
 *
 * @param longest screen whose frame is longest
 * @param widest screen whose frame is widest
 * @param clearance working room that the plan wants on each side of a frame
 * @param lengthNeeded longest frame and its clearance at both ends
 * @param widthNeeded widest frame and its clearance at both sides
 * @param count stations as the plan has them
 * @param holds how many stations of the needed length the table holds
 * @param tableWidth of the table
 * @param frameExcess how much the frames alone are larger than the station, in the worse direction;
 *     zero or less if they fit
 * @param excess the same with clearance
 */
public record StationFit(
    String longest,
    String widest,
    Length frameLength,
    Length frameWidth,
    Length stationLength,
    Length stationWidth,
    Length clearance,
    Length lengthNeeded,
    Length widthNeeded,
    int count,
    int holds,
    Length tableWidth,
    Length frameExcess,
    Length excess,
    PlanPath path)
    implements Evidence {

  static List<StationFit> of(PrintPlan plan, Layout layout) {
    if (plan.table().stations().isEmpty() || layout.footprints().isEmpty()) {
      return List.of();
    }
    Table.Stations stations = plan.table().stations().get();
    double length = 0;
    double width = 0;
    String longest = "";
    String widest = "";
    for (Map.Entry<String, List<Placement>> arranged : layout.arrangements().entrySet()) {
      // All placements of an arrangement lie turned alike, so the first one speaks for all.
      for (Footprint footprint : layout.footprintsOf(arranged.getValue().get(0).id())) {
        Envelope frame = footprint.frame().getEnvelopeInternal();
        if (frame.getWidth() > length + Length.TOLERANCE) {
          length = frame.getWidth();
          longest = footprint.screen().name();
        }
        if (frame.getHeight() > width + Length.TOLERANCE) {
          width = frame.getHeight();
          widest = footprint.screen().name();
        }
      }
    }
    double clear = 2 * stations.clearance().mm();
    double excess = Math.max(length - stations.length().mm(), width - stations.width().mm());
    return List.of(
        new StationFit(
            longest,
            widest,
            new Length(length),
            new Length(width),
            stations.length(),
            stations.width(),
            stations.clearance(),
            new Length(length + clear),
            new Length(width + clear),
            stations.count(),
            holds(plan.table(), stations, length + clear),
            plan.table().width(),
            rounded(excess),
            rounded(excess + clear),
            stations.path()));
  }

  private static int holds(Table table, Table.Stations stations, double length) {
    double step = Math.max(length, stations.length().mm()) + stations.gap().mm();
    double row = table.length().mm() + stations.gap().mm() + Length.TOLERANCE;
    return (int) Math.floor(row / step);
  }

  private static Length rounded(double mm) {
    return new Length(Math.abs(mm) < Length.TOLERANCE ? 0 : mm);
  }

  /** The screens that need the room, one or two. */
  public List<String> screens() {
    return longest.equals(widest) ? List.of(longest) : List.of(longest, widest);
  }
}
