package strikeoff.bath;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Area;
import strikeoff.units.Span;

/**
 * How long it takes to iron all that is printed in paint, spot by spot.
 *
 * @param printed area that takes paint, of each placement that of its largest separation: overlaps
 *     are not ironed twice, so it is the least there is
 * @param sole what the iron heats at a time
 * @param spots how often it is set down at least
 * @param needed the shortest time at each spot
 * @param total all spots together, in whole minutes
 * @param lasts the step's time in the plan, which is what the clock counts
 * @param marks placements concerned
 */
public record IronTime(
    Area printed,
    Area sole,
    int spots,
    Span needed,
    Span total,
    Span lasts,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public IronTime {
    marks = List.copyOf(marks);
  }
}
