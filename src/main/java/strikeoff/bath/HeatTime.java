package strikeoff.bath;

import java.util.List;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Measures;
import strikeoff.units.Share;
import strikeoff.units.Span;

/**
 * The time of a heat-set at each spot.
 *
 * @param needed the shortest time that sets all paints at this temperature
 * @param asks the paint that asks for it
 * @param labelled true if the paint's label says so, false if binders of its kind do
 * @param lacks what is missing to {@code needed}; zero if it is long enough
 * @param more the same in whole minutes
 * @param reached the time as a share of {@code needed}
 */
public record HeatTime(
    HeatSetting heat,
    Span needed,
    String asks,
    boolean labelled,
    Span lacks,
    Span more,
    Share reached,
    PlanPath path)
    implements Evidence {

  /** The same as edits. */
  public List<List<Edit>> edits(Measures units) {
    if (heat.harms()) {
      return heat.coolingEdits(units);
    }
    boolean cool = heat.temperature().compareTo(heat.coolest()) < 0;
    return cool
        ? heat.heatingEdits(units)
        : List.of(List.of(new Edit.Write(path, needed.halfMinutesUp().text())));
  }

  /** The time that it needs, in whole minutes. */
  public Span wholeMinutes() {
    return needed.wholeMinutesUp();
  }
}
