package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.Breaks;
import strikeoff.day.Moment;
import strikeoff.day.facts.Rehearsal;
import strikeoff.plan.DyeFixing;
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
  private final Shifts shifts;
  private final Breaks breaks;
  private final long over;
  private final List<Boolean> followAtOnce;

  /**
   * @param shifts by which the prints are worked that come before them
   */
  LastSteps(Leeway leeway, Rehearsal rehearsal, Policy policy, Shifts shifts) {
    this.leeway = leeway;
    this.rehearsal = rehearsal;
    this.shifts = shifts;
    this.breaks = new Breaks(leeway.plan().hours());
    this.over = secondsOver(policy);
    this.followAtOnce = leeway.followAtOnce();
  }

  /** How long after closing somebody may stop: seconds are told by nobody. */
  static long secondsOver(Policy policy) {
    return Math.round(policy.time().fewMinutesOver().minutes() * 60) + 59;
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
      long closes = Moment.closes(day, hours).seconds();
      long opens = Moment.opens(day + 1, hours).seconds();
      shortest = Math.min(shortest, opens - closes);
    }
    return shortest;
  }

  /** On which day each of the last steps begins at the soonest. */
  List<Integer> days(Soonest dry) {
    List<Integer> days = new ArrayList<>();
    long at = shifts.ready(dry);
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
    long ready = shifts.ready(dry);
    Bound.Binding because = dry.because();
    int rests = 0;
    long at = ready;
    for (int i = 0; i < leeway.last().size(); i++) {
      long begins = begins(i, at, days.get(i));
      if (begins > at && begins == breaks.over(at)) {
        rests++;
      } else if (begins > at) {
        because = new Bound.Night(new Moment(begins), begins(i, at, 1) < begins);
      }
      at = begins + PrintTimes.seconds(lasts(leeway.last().get(i)));
    }
    return new Bound(
        new Moment(at), new Moment(ready), because, new Bound.Rests(shifts.rests(dry), rests));
  }

  /** When one of the last steps begins that is to be done within one day's hours. */
  private long begins(int last, long from, int notBefore) {
    Step step = leeway.last().get(last);
    if (step instanceof Step.Fix fix && fix.how() == DyeFixing.BATCH) {
      return breaks.over(from);
    }
    Hours hours = leeway.plan().hours();
    long at = notBefore > new Moment(from).day() ? Moment.opens(notBefore, hours).seconds() : from;
    int day = new Moment(at).day();
    long begins = breaks.over(Math.max(at, Moment.opens(day, hours).seconds()));
    long ends = begins + PrintTimes.seconds(lasts(step));
    for (int i = last + 1; i < leeway.last().size() && followAtOnce.get(i); i++) {
      ends = breaks.over(ends) + PrintTimes.seconds(lasts(leeway.last().get(i)));
    }
    long closing = Moment.closes(day, hours).seconds() + over;
    boolean late = at >= Moment.opens(day, hours).seconds() && ends > closing;
    return late ? Moment.opens(day + 1, hours).seconds() : begins;
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
