package strikeoff.plan;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * The dates of a run, whose days follow each other in the calendar.
 *
 * @param startOn the date of day 1
 * @param finishBy the date by which everything is to be done
 */
public record Dates(Optional<LocalDate> startOn, Optional<LocalDate> finishBy) {

  public static final Dates NONE = new Dates(Optional.empty(), Optional.empty());

  /** The date of a day, counted from 1. */
  public Optional<LocalDate> of(int day) {
    return startOn.map(first -> first.plusDays(day - 1L));
  }

  /**
   * The last date on which a run may begin.
   *
   * @param days that it takes
   */
  public Optional<LocalDate> latestStart(int days) {
    return finishBy.map(last -> last.minusDays(days - 1L));
  }

  /** As it is said, {@code Saturday 6 March 2027}: the same in every place. */
  public static String text(LocalDate date) {
    return named(date.getDayOfWeek())
        + " "
        + date.getDayOfMonth()
        + " "
        + named(date.getMonth())
        + " "
        + date.getYear();
  }

  private static String named(Enum<?> name) {
    return name.name().charAt(0) + name.name().substring(1).toLowerCase(Locale.ROOT);
  }
}
