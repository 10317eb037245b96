package strikeoff.plan;

import java.util.List;
import strikeoff.document.PlanPath;

/**
 * When the print room is open, day by day. Days beyond the list repeat its last entry.
 *
 * @param days opening hours of day 1, day 2 …; at least one
 */
public record Hours(List<Day> days, PlanPath path) {

  public Hours {
    days = List.copyOf(days);
    if (days.isEmpty()) {
      throw new IllegalArgumentException("no opening hours");
    }
  }

  /** The hours of a day, counted from 1. */
  public Day of(int day) {
    return days.get(Math.min(day, days.size()) - 1);
  }

  /**
   * One day's hours in minutes after midnight.
   *
   * @param opens before {@code closes}
   */
  public record Day(int opens, int closes) {

    public Day {
      if (!(0 <= opens && opens < closes && closes <= 24 * 60)) {
        throw new IllegalArgumentException("not opening hours: " + opens + " to " + closes);
      }
    }
  }
}
