package strikeoff.day.facts;

import java.util.List;
import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Span;

/**
 * The run once more with the least waits put in that clear its contacts and let cloth be taken up
 * only when it is safe: what all drying findings together cost.
 *
 * @param surely false if only what is too wet by the most likely drying time is cleared, true if
 *     slow drying is too
 * @param asWritten when the run ends as the plan has it
 * @param finish when it ends with the waits
 * @param waits what to write, one for each place, in the order in which they were found missing
 * @param days the days at the table with the waits
 * @param cleared how many contacts and early takings-up of the run as written are gone
 * @param left how many are left, since no wait clears them or the trials ran out
 * @param outlasted what stands too long for these waits
 */
public record ClearedRun(
    boolean surely,
    Moment asWritten,
    Moment finish,
    List<Remedy> waits,
    List<TableDay> days,
    int cleared,
    int left,
    Outlasted outlasted,
    PlanPath path)
    implements Evidence {

  public ClearedRun {
    waits = List.copyOf(waits);
    days = List.copyOf(days);
  }

  /** How much later the run ends. */
  public Span longer() {
    return finish.since(asWritten);
  }
}
