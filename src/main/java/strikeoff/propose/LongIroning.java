package strikeoff.propose;

import java.util.Optional;
import strikeoff.day.Ironing;
import strikeoff.layout.Layout;
import strikeoff.plan.HeatSource;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Span;

/**
 * Paint that would have to be ironed for longer than the room is open on any day, in a plan that
 * says nothing of how it is set: an iron is assumed, and no run of such a plan is one.
 */
final class LongIroning {

  private LongIroning() {}

  /**
   * @param each how long a spot is ironed
   * @return in a few sentences how long it takes and what to write; nothing if a day is enough
   */
  static Optional<String> told(PrintPlan plan, Layout layout, Span each, Policy policy) {
    Span day = plan.hours().longest();
    Ironing iron = Ironing.of(layout.footprints(), HeatSource.IRON, policy).orElseThrow();
    if (minutes(iron, each) <= day.plus(policy.time().fewMinutesOver()).minutes()) {
      return Optional.empty();
    }
    Ironing press = Ironing.of(layout.footprints(), HeatSource.PRESS, policy).orElseThrow();
    return Optional.of(
        "Its run has no steps that fix the prints, and an iron, which is assumed then, takes too"
            + " long: "
            + spots(iron, plan)
            + ", "
            + each.text()
            + " at each, are "
            + lasts(iron, each)
            + ", and no day is open for longer than "
            + day.text()
            + ". Write into `run` what sets them: `- heat-set: oven`, in which all of them lie at"
            + " once"
            + (minutes(press, each) <= day.minutes()
                ? ", or `- heat-set: press` ("
                    + spots(press, plan)
                    + ", "
                    + lasts(press, each)
                    + ")"
                : "")
            + ". Then ask again.");
  }

  private static double minutes(Ironing ironing, Span each) {
    return Math.max(1, ironing.spots()) * each.minutes();
  }

  private static String lasts(Ironing ironing, Span each) {
    return new Span(minutes(ironing, each)).text();
  }

  private static String spots(Ironing ironing, PrintPlan plan) {
    return (ironing.spots() == 1 ? "1 spot" : ironing.spots() + " spots")
        + " of "
        + ironing.sole().text(plan.measures());
  }
}
