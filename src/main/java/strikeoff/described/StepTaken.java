package strikeoff.described;

import java.util.List;
import strikeoff.day.AboutStep;
import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * A step of the run.
 *
 * @param step its number, from 1
 * @param kind mix, print, dry, move, sew, soak, batch, steam, rinse, wash, heat-set or end of day
 * @param begins when it begins; where it takes no time, and where it can't start, when the step
 *     before it ends
 * @param ends when it ends, with what is waited for after it
 * @param pastes that are mixed or printed
 * @param screens that are printed with or washed
 * @param designs that are printed
 * @param arrangements that are printed
 */
public record StepTaken(
    int step,
    String kind,
    Step doing,
    Moment begins,
    Moment ends,
    List<String> pastes,
    List<String> screens,
    List<String> designs,
    List<String> arrangements,
    PlanPath path)
    implements AboutStep {

  public StepTaken {
    pastes = List.copyOf(pastes);
    screens = List.copyOf(screens);
    designs = List.copyOf(designs);
    arrangements = List.copyOf(arrangements);
  }

  /** The day on which it begins, from 1. */
  public int day() {
    return begins.day();
  }

  /** Minutes after midnight at which it begins. */
  public double beginsAt() {
    return begins.minuteOfDay();
  }

  /** Minutes after the midnight before it begins at which it ends. */
  public double endsAt() {
    return ends.since(Moment.of(begins.day(), 0)).minutes();
  }

  /** From its beginning to its end. */
  public Span lasts() {
    return ends.since(begins);
  }
}
