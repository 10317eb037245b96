package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.Moment;
import strikeoff.day.facts.Rehearsal;
import strikeoff.plan.Hours;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.units.Span;

/**
 * When the last steps are done, each within one day's hours, after prints that are ready for them.
 */
final class LastSteps {

  private final Leeway leeway;
  private final Rehearsal rehearsal;
  private final Policy policy;
  private final List<Boolean> followAtOnce;
  private final Moment from;

  /**
   * @param from when the first of those prints can begin at the soonest
   */
  LastSteps(Leeway leeway, Rehearsal rehearsal, Policy policy, Moment from) {
    this.from = from;
    this.leeway = leeway;
    this.rehearsal = rehearsal;
    this.policy = policy;
    this.followAtOnce = leeway.followAtOnce();
  }

  /** The first day for each, as if there were no night. */
  List<Integer> anyDay() {
    return leeway.last().stream().map(step -> 1).toList();
  }

  /** The shortest time from a closing to the next opening, in seconds. */
  long shortestNight() {
    Hours hours = leeway.plan().hours();
    long shortest = Long.MAX_VALUE;
    for (int day = 1; day <= hours.days().size() + 1; day++) {
      long closes = Moment.of(day, hours.of(day).closes()).seconds();
      long opens = Moment.of(day + 1, hours.of(day + 1).opens()).seconds();
      shortest = Math.min(shortest, opens - closes);
    }
    return shortest;
  }

  private long ready(Soonest dry) {
    return Math.max(from.seconds() + dry.plain(), worked(dry.worked(), leeway.plan().hours()));
  }

  /** On which day each of the last steps begins at the soonest. */
  List<Integer> days(Soonest dry) {
    List<Integer> days = new ArrayList<>();
    long at = ready(dry);
    for (int i = 0; i < leeway.last().size(); i++) {
      long begins = begins(i, at, 1);
      days.add(new Moment(begins).day());
      at = begins + PrintTimes.seconds(lasts(leeway.last().get(i)));
    }
    return days;
  }

  /**
   * The bound for a run whose prints are ready for the last steps no sooner.
   *
   * @param days on which each of the last steps begins at the soonest
   */
  Bound bound(Soonest dry, List<Integer> days) {
    long ready = ready(dry);
    Bound.Binding because = dry.because();
    long at = ready;
    for (int i = 0; i < leeway.last().size(); i++) {
      long begins = begins(i, at, days.get(i));
      if (begins > at) {
        because = new Bound.Night(new Moment(begins), begins(i, at, 1) < begins);
      }
      at = begins + PrintTimes.seconds(lasts(leeway.last().get(i)));
    }
    return new Bound(new Moment(at), new Moment(ready), because);
  }

  /** When one of the last steps begins that is to be done within one day's hours. */
  private long begins(int last, long from, int notBefore) {
    Step step = leeway.last().get(last);
    if (step instanceof Step.Fix fix && fix.how() == Step.Fixing.BATCH) {
      return from;
    }
    long within = PrintTimes.seconds(lasts(step));
    for (int i = last + 1; i < leeway.last().size() && followAtOnce.get(i); i++) {
      within += PrintTimes.seconds(lasts(leeway.last().get(i)));
    }
    Hours hours = leeway.plan().hours();
    long few = Math.round(policy.time().fewMinutesOver().minutes() * 60);
    long at =
        notBefore > new Moment(from).day()
            ? Moment.of(notBefore, hours.of(notBefore).opens()).seconds()
            : from;
    int day = new Moment(at).day();
    long opening = Moment.of(day, hours.of(day).opens()).seconds();
    // Seconds are told by nobody.
    long closing = Moment.of(day, hours.of(day).closes()).seconds() + few + 59;
    if (at < opening) {
      return opening;
    }
    return at + within > closing ? Moment.of(day + 1, hours.of(day + 1).opens()).seconds() : at;
  }

  /** The clock when so many seconds of opening hours are over since then. */
  private long worked(long seconds, Hours hours) {
    long left = seconds;
    for (int day = from.day(); ; day++) {
      long opens = Math.max(from.seconds(), Moment.of(day, hours.of(day).opens()).seconds());
      long closes = Moment.of(day, hours.of(day).closes()).seconds();
      if (left <= closes - opens) {
        return opens + left;
      }
      left -= Math.max(0, closes - opens);
    }
  }

  private Span lasts(Step step) {
    if (step instanceof Step.Fix fix) {
      return fix.lasts();
    }
    if (step instanceof Step.Rinse rinse) {
      return rinse.lasts();
    }
    if (step instanceof Step.Wash wash) {
      return wash.lasts();
    }
    Step.HeatSet set = (Step.HeatSet) step;
    boolean first =
        leeway.last().stream().filter(Step.HeatSet.class::isInstance).findFirst().get() == set;
    return first ? rehearsal.heats(set) : set.lasts();
  }
}
