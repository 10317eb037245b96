package strikeoff.timeline;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.policy.Policy;
import strikeoff.timeline.Causes.Cause;
import strikeoff.timeline.Causes.Pair;
import strikeoff.timeline.Remedy.How;

/**
 * Tries what a printer could write, by simulating the run with it. A budget of impressions bounds
 * the work: past it a remedy is computed from the shortfall alone.
 */
final class Trials {

  private static final int ROUNDS = 4;

  private final PrintPlan plan;
  private final Layout layout;
  private final Policy policy;
  private long budget;

  Trials(PrintPlan plan, Layout layout, Policy policy) {
    this.plan = plan;
    this.layout = layout;
    this.policy = policy;
    this.budget = (long) policy.limit("time/most-trials").amount();
  }

  /**
   * What came of trying.
   *
   * @param finish when the run then ends; empty if it was not tried
   * @param late which day then ends after the room closes, in words; empty if none does
   * @param cleared whether the cause is gone; true if it was not tried
   */
  record Outcome(Remedy remedy, Optional<Moment> finish, String late, boolean cleared) {}

  /** The least wait in whole minutes that clears a cause, certainly or even in slow drying. */
  Outcome waitFor(Cause cause, List<Pair> pairs, boolean surely, int impressions) {
    Remedy remedy = Remedy.in(plan, cause.how(), cause.step(), minutes(plan, cause, pairs, surely));
    for (int round = 0; round < ROUNDS; round++) {
      if (budget < impressions) {
        return new Outcome(remedy, Optional.empty(), "", true);
      }
      Timeline.Day day = trial(remedy, impressions);
      double left = worst(Causes.of(day).getOrDefault(cause, List.of()), surely);
      if (left <= 0) {
        return new Outcome(remedy, Optional.of(day.finish()), late(remedy, day), true);
      }
      remedy = remedy.longer((long) Math.ceil(left / 60));
    }
    return new Outcome(remedy, Optional.empty(), "", false);
  }

  /**
   * Printing every other placement first, with the least wait before those between them that clears
   * the cause; empty if that does not. People who print side by side make no passes.
   */
  Optional<Outcome> everyOther(Cause cause, boolean surely, int impressions) {
    boolean can =
        plan.run().stream()
            .anyMatch(
                s ->
                    s.number() == cause.step()
                        && s instanceof Step.Print p
                        && !p.everyOther()
                        && p.also().isEmpty());
    if (cause.how() != How.PAUSE || !can) {
      return Optional.empty();
    }
    Cause between = new Cause(How.DRY_BETWEEN_PASSES, cause.step());
    Remedy remedy = Remedy.in(plan, How.EVERY_OTHER, cause.step(), 0);
    for (int round = 0; round < ROUNDS && budget >= impressions; round++) {
      Timeline.Day day = trial(remedy, impressions);
      Map<Cause, List<Pair>> causes = Causes.of(day);
      if (worst(causes.getOrDefault(cause, List.of()), surely) > 0) {
        return Optional.empty();
      }
      double left = worst(causes.getOrDefault(between, List.of()), surely);
      if (left <= 0) {
        return Optional.of(new Outcome(remedy, Optional.of(day.finish()), late(remedy, day), true));
      }
      remedy = remedy.longer((long) Math.ceil(left / 60));
    }
    return Optional.empty();
  }

  /** When the run ends with a remedy; empty if there is no budget left to try it. */
  Optional<Moment> finish(Remedy remedy, int impressions) {
    return budget < impressions
        ? Optional.empty()
        : Optional.of(trial(remedy, impressions).finish());
  }

  /** The first day on which a remedy would keep people past closing. */
  private String late(Remedy remedy, Timeline.Day day) {
    return DayTooLong.all(day, remedy.applied(plan)).stream()
        .findFirst()
        .map(
            d ->
                "; day "
                    + d.day()
                    + " then ends at "
                    + d.ends().clock()
                    + ", after the room closes at "
                    + d.closes().clock())
        .orElse("");
  }

  private Timeline.Day trial(Remedy remedy, int impressions) {
    budget -= impressions;
    return Timeline.Day.of(remedy.applied(plan), layout, policy);
  }

  /** By arithmetic: what is missing, shared out over the waits between the two impressions. */
  static long minutes(PrintPlan plan, Cause cause, List<Pair> pairs, boolean surely) {
    double most = 0;
    for (Pair pair : pairs) {
      Contact contact = pair.contact();
      double missing = surely ? contact.shortMost().minutes() : contact.shortBest().minutes();
      if (missing > 0) {
        most = Math.max(most, present(plan, cause, pair) + missing / pair.waitsBetween());
      }
    }
    return (long) Math.ceil(most - 1e-9);
  }

  /** The wait that the plan has in that place now. */
  private static double present(PrintPlan plan, Cause cause, Pair pair) {
    if (cause.how() == How.DRY_STEP) {
      return 0;
    }
    for (Step step : plan.run()) {
      if (step.number() == cause.step() && step instanceof Step.Print print) {
        if (Remedy.written(cause.how(), print).until() instanceof Until.Time time) {
          return Math.max(0, time.span().minutes());
        }
      }
    }
    // a wait until some state: at most all the time that lies between the two
    return pair.contact().later().laid().since(pair.contact().earlier().lifted()).minutes();
  }

  static double worst(List<Pair> pairs, boolean surely) {
    return pairs.stream()
        .mapToDouble(
            p -> surely ? p.contact().shortMost().seconds() : p.contact().shortBest().seconds())
        .max()
        .orElse(0);
  }
}
