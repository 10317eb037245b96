package strikeoff.bath;

import java.util.List;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.HeatSource;
import strikeoff.units.Area;
import strikeoff.units.Span;

/**
 * How long it takes to iron or press all that is printed in paint, spot by spot: what the clock
 * counts.
 *
 * @param step number of the heat-set
 * @param with iron or press
 * @param motifs how many placements hold paint
 * @param images area of their images
 * @param sole what it heats at a time
 * @param spots how often it is set down on one side
 * @param sides how many sides are ironed
 * @param each the step's time at each spot
 * @param total all spots of all sides together
 * @param needed the shortest time at a spot that sets all paints at this temperature
 * @param marks placements concerned
 */
public record IronTime(
    int step,
    HeatSource with,
    int motifs,
    Area images,
    Area sole,
    int spots,
    int sides,
    Span each,
    Span total,
    Span needed,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public IronTime {
    marks = List.copyOf(marks);
  }

  /** What each spot would get if the step's time were meant for all of them. */
  public Span shared() {
    return new Span(each.minutes() / (Math.max(1.0, spots) * sides));
  }

  /** What it would take with the shortest time at each. */
  public Span atLeast() {
    return new Span(needed.minutes() * Math.max(1.0, spots) * sides);
  }

  /** True if each spot gets more than it needs. */
  public boolean canBeShorter() {
    return needed.compareTo(each) < 0;
  }

  /** The same as edits. */
  public List<List<Edit>> edits() {
    return canBeShorter() ? List.of(List.of(new Edit.Write(path, needed.text()))) : List.of();
  }
}
