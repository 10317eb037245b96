package strikeoff.layout;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Table;
import strikeoff.units.Length;

/**
 * How many stations the table holds: ⌊(table + gap) / (station + gap)⌋.
 *
 * @param wanted stations the plan wants
 * @param holds stations the table's length holds
 * @param tableNeeded table length that holds as many as wanted
 * @param stationThatFits station length of which the table holds as many as wanted; zero or less if
 *     the gaps alone fill it
 * @param stationWidth of one across the table
 * @param stationNeeded the what the longest frame takes along the table with its working room; zero
 *     if none is laid
 */
public record StationRow(
    int wanted,
    int holds,
    Length tableLength,
    Length tableWidth,
    Length stationLength,
    Length stationWidth,
    Length gap,
    Length tableNeeded,
    Length stationThatFits,
    Length stationNeeded,
    PlanPath path,
    PlanPath tablePath)
    implements Evidence {

  static List<StationRow> of(PrintPlan plan, Layout layout) {
    Table table = plan.table();
    double frame = 0;
    for (Footprint footprint : layout.footprints()) {
      frame = Math.max(frame, footprint.frame().getEnvelopeInternal().getWidth());
    }
    Length longest = new Length(frame);
    return table.stations().map(s -> of(table, s, longest)).stream().toList();
  }

  private static StationRow of(Table table, Table.Stations stations, Length longest) {
    double length = table.length().mm();
    double station = stations.length().mm();
    double gap = stations.gap().mm();
    int count = stations.count();
    return new StationRow(
        count,
        holds(table, stations),
        table.length(),
        table.width(),
        stations.length(),
        stations.width(),
        stations.gap(),
        new Length(count * station + (count - 1) * gap),
        new Length((length - (count - 1) * gap) / count),
        longest.mm() > 0 ? longest.plus(stations.clearance().times(2)) : longest,
        stations.path().key("count"),
        table.path());
  }

  static int holds(Table table, Table.Stations stations) {
    double gap = stations.gap().mm();
    double step = stations.length().mm() + gap;
    return (int) Math.floor((table.length().mm() + gap + Length.TOLERANCE) / step);
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.TABLE, tablePath));
  }
}
