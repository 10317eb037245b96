package strikeoff.bath;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.timeline.Moment;
import strikeoff.units.Span;

/**
 * Films that a bath, steam or heat reaches before they are fix-safe, or before they surely are.
 *
 * @param step number of the step
 * @param what soak, steam or heat-set
 * @param heat true for heat on paint, false for bath or steam on dye
 * @param start when the step starts
 * @param safe when the slowest film is fix-safe by the most careful estimate
 * @param shortLeast by how much the slowest film is too early if it dries as fast as credible;
 *     above zero if it is too early by every estimate
 * @param shortBest the same by the most likely drying
 * @param shortMost the same if it dries as slowly as credible; always above zero
 * @param films how many films are concerned
 * @param pastes theirs
 * @param marks placements concerned
 * @param related the print step of the slowest film
 * @param path of the step
 */
public record TooWet(
    int step,
    String what,
    boolean heat,
    Moment start,
    Moment safe,
    Span shortLeast,
    Span shortBest,
    Span shortMost,
    int films,
    List<String> pastes,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public TooWet {
    pastes = List.copyOf(pastes);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  /** The wait that makes it safe, in whole minutes. */
  public Span waitNeeded() {
    return shortMost.wholeMinutesUp();
  }
}
