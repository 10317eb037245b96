package strikeoff.described;

import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * A day of the run.
 *
 * @param day from 1
 * @param begins when somebody begins to work
 * @param ends when the last one stops
 * @param lays frames laid on that day
 * @param path the step that ends last
 */
public record DayWorked(int day, Moment begins, Moment ends, int lays, PlanPath path)
    implements Evidence {

  /** Minutes after midnight at which work begins. */
  public double beginsAt() {
    return begins.minuteOfDay();
  }

  /**
   * Minutes after the midnight before at which work ends; more than 1440 if it is past the next.
   */
  public double endsAt() {
    return ends.since(Moment.of(day, 0)).minutes();
  }

  /** As {@code 16:20}. */
  public String endsClock() {
    return ends.clock();
  }
}
