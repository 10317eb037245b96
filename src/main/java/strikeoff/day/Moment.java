package strikeoff.day;

import strikeoff.plan.Hours;
import strikeoff.units.Span;

/** A point of the print days' clock, in seconds after midnight before day 1. */
public record Moment(long seconds) implements Comparable<Moment> {

  private static final long DAY = 24L * 60 * 60;

  /** What nobody times by hand, in seconds: 10.00001 s, come of converting units, are ten. */
  private static final double UNTIMED = 0.01;

  public static Moment of(int day, int minutesAfterMidnight) {
    return new Moment((day - 1) * DAY + minutesAfterMidnight * 60L);
  }

  /** When the room opens on a day, counted from 1. */
  public static Moment opens(int day, Hours hours) {
    return of(day, hours.of(day).opens());
  }

  /** When it closes. */
  public static Moment closes(int day, Hours hours) {
    return of(day, hours.of(day).closes());
  }

  /** From 1. */
  public int day() {
    return (int) (Math.floorDiv(seconds, DAY) + 1);
  }

  public double minuteOfDay() {
    return Math.floorMod(seconds, DAY) / 60.0;
  }

  /** Rounded up to whole seconds, so that a wait never ends early by more than nobody notices. */
  public Moment plus(Span span) {
    return new Moment(seconds + (long) Math.ceil(span.seconds() - UNTIMED));
  }

  /** How long it is from the earlier moment to this one; negative if it comes after. */
  public Span since(Moment earlier) {
    return Span.ofSeconds(seconds - earlier.seconds);
  }

  /**
   * The whole minute at or after this moment. A sheet tells minutes, and what may not be done
   * sooner is never told sooner than that.
   */
  public Moment upToMinute() {
    return new Moment(-Math.floorDiv(-seconds, 60L) * 60);
  }

  /** Whether the clock shows a later minute than at another moment: seconds are told by nobody. */
  public boolean isMinutesAfter(Moment other) {
    return Math.floorDiv(seconds, 60L) > Math.floorDiv(other.seconds, 60L);
  }

  public Moment later(Moment other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /** As {@code 14:05}. */
  public String clock() {
    long minute = Math.floorMod(seconds, DAY) / 60;
    return two(minute / 60) + ":" + two(minute % 60);
  }

  /** As {@code day 2, 14:05}; before the run as {@code 3 days before day 1, 18:00}. */
  public String text() {
    return dayText() + ", " + clock();
  }

  private String dayText() {
    int before = 1 - day();
    return before <= 0
        ? "day " + day()
        : (before == 1 ? "the day" : before + " days") + " before day 1";
  }

  /** An answer to on which day: {@code on day 2}, {@code on the day before day 1}. */
  public String dayWhen() {
    return (day() < 0 ? "" : "on ") + dayText();
  }

  /** An answer to when: {@code on day 2, 14:05}, {@code 3 days before day 1, 18:00}. */
  public String when() {
    return day() < 1 ? text() : "on " + text();
  }

  private static String two(long number) {
    return number < 10 ? "0" + number : Long.toString(number);
  }

  @Override
  public int compareTo(Moment other) {
    return Long.compare(seconds, other.seconds);
  }

  @Override
  public String toString() {
    return text();
  }
}
