package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.Moment;
import strikeoff.plan.Hours;
import strikeoff.policy.Policy;

/**
 * The clock by which hands work, from when they may begin: by night, and in a break, nobody begins
 * anything, while films dry on.
 */
final class Shifts {

  private final Hours hours;
  private final Moment from;
  private final Work work;

  /** So many seconds after closing are as good as none. */
  private final long over;

  /**
   * What there is to do, in seconds.
   *
   * @param longest what may be begun just before a break, and is finished in it, takes at the most
   * @param load to lay the cloth, which comes before all of it but the mixing
   * @param mixes to mix all pastes
   */
  record Work(long longest, long load, long mixes) {}

  /**
   * @param from when work can begin at the soonest
   */
  Shifts(Hours hours, Moment from, Work work, Policy policy) {
    this.hours = hours;
    this.from = from;
    this.work = work;
    this.over = LastSteps.secondsOver(policy);
  }

  /** When the cloth is ready for the last steps at the soonest. */
  long ready(Soonest soonest) {
    return Math.max(from.seconds() + soonest.plain(), done(soonest.worked()) + soonest.after());
  }

  Soonest later(Soonest one, Soonest other) {
    return other != null && (one == null || ready(other) > ready(one)) ? other : one;
  }

  Soonest sooner(Soonest one, Soonest other) {
    return one == null || ready(other) < ready(one) ? other : one;
  }

  /** How many breaks keep the cloth from being ready any sooner. */
  int rests(Soonest soonest) {
    long ready = ready(soonest);
    int day = from.day();
    if (ready == from.seconds() + soonest.plain() || new Moment(ready).day() > day) {
      return 0;
    }
    return (int)
        hours.of(day).breaks().stream()
            .filter(rest -> Moment.of(day, rest.from()).seconds() < ready)
            .filter(rest -> Moment.of(day, rest.to()).compareTo(from) > 0)
            .count();
  }

  /** The clock when so many seconds of work can be done. */
  private long done(long seconds) {
    long done = doneWithout(seconds);
    // If the cloth is being laid as a break begins, nothing but mixing was done before.
    for (Hours.Break rest : hours.of(from.day()).breaks()) {
      long goesOn = Moment.of(from.day(), rest.to()).seconds();
      if (goesOn > from.seconds()) {
        done = Math.min(done, goesOn + Math.max(0, seconds - work.load - work.mixes));
      }
    }
    return done;
  }

  /** The same if the cloth is laid at another time. */
  private long doneWithout(long seconds) {
    long left = seconds;
    for (int day = from.day(); ; day++) {
      for (long[] shift : shifts(day)) {
        long begins = Math.max(from.seconds(), shift[0]);
        if (left <= shift[1] - begins) {
          return begins + left;
        }
        left -= Math.max(0, shift[1] - begins);
      }
    }
  }

  /** From when until when something may be done, stretch by stretch of a day. */
  private List<long[]> shifts(int day) {
    Hours.Day open = hours.of(day);
    List<long[]> shifts = new ArrayList<>();
    long begins = Moment.of(day, open.opens()).seconds();
    for (Hours.Break rest : open.breaks()) {
      long stops = Moment.of(day, rest.from()).seconds();
      long goesOn = Moment.of(day, rest.to()).seconds();
      shifts.add(new long[] {begins, Math.min(goesOn, stops + work.longest)});
      begins = goesOn;
    }
    shifts.add(new long[] {begins, Moment.of(day, open.closes()).seconds() + over});
    return shifts;
  }
}
