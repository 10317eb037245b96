package strikeoff.layout;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
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
    PlanPath path,
    PlanPath tablePath)
    implements Evidence {

  static List<StationRow> of(PrintPlan plan) {
    Table table = plan.table();
    return table.stations().map(s -> of(table, s)).stream().toList();
  }

  private static StationRow of(Table table, Table.Stations stations) {
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
        stations.path().key("count"),
        table.path());
  }

  static int holds(Table table, Table.Stations stations) {
    double gap = stations.gap().mm();
    double step = stations.length().mm() + gap;
    return (int) Math.floor((table.length().mm() + gap + Tube.ROUNDING) / step);
  }

  @Override
  public List<Related> related() {
    return List.of(new Related("the table", tablePath));
  }
}
