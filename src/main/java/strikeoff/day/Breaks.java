package strikeoff.day;

import strikeoff.plan.Hours;

/**
 * The breaks in the hours. No work begins in one; what was begun before it is finished, and what
 * needs no hands goes on.
 */
public final class Breaks {

  private final Hours hours;
  private final boolean none;

  public Breaks(Hours hours) {
    this.hours = hours;
    this.none = !hours.hasBreaks();
  }

  /** When work can begin that could begin at a second but for a break. */
  public long over(long second) {
    if (none) {
      return second;
    }
    int day = new Moment(second).day();
    long midnight = Moment.of(day, 0).seconds();
    for (Hours.Break rest : hours.of(Math.max(1, day)).breaks()) {
      if (second >= midnight + rest.from() * 60L && second < midnight + rest.to() * 60L) {
        return midnight + rest.to() * 60L;
      }
    }
    return second;
  }

  /** Seconds of breaks in a stretch of one day or several. */
  public long within(long start, long end) {
    long seconds = 0;
    int last = none ? 0 : new Moment(end).day();
    for (int day = Math.max(1, new Moment(start).day()); day <= last; day++) {
      long midnight = Moment.of(day, 0).seconds();
      for (Hours.Break rest : hours.of(day).breaks()) {
        long from = Math.max(start, midnight + rest.from() * 60L);
        seconds += Math.max(0, Math.min(end, midnight + rest.to() * 60L) - from);
      }
    }
    return seconds;
  }
}
