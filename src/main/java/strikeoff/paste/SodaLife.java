package strikeoff.paste;

import java.util.Optional;
import strikeoff.day.facts.Mixings;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Range;
import strikeoff.units.Span;

/**
 * How long a dye paste would live if soda were stirred into it, against the run as it is written.
 *
 * @param lifeMinutes with soda, as the table of reactive groups says, in the plan's room
 * @param needed from its mixing to its last print
 */
public record SodaLife(String paste, Range lifeMinutes, Span needed) {

  /**
   * Empty if the paste isn't mixed and printed, or nobody knows how long it lives in such a room.
   */
  public static Optional<SodaLife> of(
      Paste paste, PrintPlan plan, Timeline timeline, Policy policy) {
    return new Ages(plan, timeline, policy, new Mixings(plan, timeline)).withSoda(paste);
  }

  /** True if it would, perhaps, be too old before its last print. */
  public boolean tooShort() {
    return needed.minutes() > lifeMinutes.low();
  }
}
