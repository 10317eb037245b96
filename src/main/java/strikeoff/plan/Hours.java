package strikeoff.plan;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.units.Span;

/**
 * When the print room is open, day by day. Days beyond the list repeat its last entry.
 *
 * @param days opening hours of day 1, day 2 …; at least one
 * @param dates when those days are
 */
public record Hours(List<Day> days, Dates dates, PlanPath path) {

  public Hours {
    days = List.copyOf(days);
    if (days.isEmpty()) {
      throw new IllegalArgumentException("no opening hours");
    }
  }

  /** Of days without dates. */
  public Hours(List<Day> days, PlanPath path) {
    this(days, Dates.NONE, path);
  }

  /** The hours of a day, counted from 1. */
  public Day of(int day) {
    return days.get(Math.min(day, days.size()) - 1);
  }

  /** How long the room is open on the day on which that is longest, breaks included. */
  public Span longest() {
    return new Span(days.stream().mapToInt(day -> day.closes() - day.opens()).max().orElseThrow());
  }

  /** True if any day has a break. */
  public boolean hasBreaks() {
    return days.stream().anyMatch(day -> !day.breaks().isEmpty());
  }

  /**
   * One day's hours in minutes after midnight.
   *
   * @param opens before {@code closes}
   * @param breaks in order, inside the hours, with work before, between and after them
   */
  public record Day(int opens, int closes, List<Break> breaks) {

    public Day {
      breaks = List.copyOf(breaks);
      int at = opens;
      for (Break rest : breaks) {
        if (rest.from() <= at) {
          throw new IllegalArgumentException("no work before the break at " + rest.from());
        }
        at = rest.to();
      }
      if (!(0 <= opens && at < closes && closes <= 24 * 60)) {
        throw new IllegalArgumentException("not opening hours: " + opens + " to " + closes);
      }
    }

    /** Without a break. */
    public Day(int opens, int closes) {
      this(opens, closes, List.of());
    }
  }

  /**
   * Time between two stretches of work, in minutes after midnight.
   *
   * @param from before {@code to}
   */
  public record Break(int from, int to) {

    public Break {
      if (from >= to) {
        throw new IllegalArgumentException("no break: " + from + " to " + to);
      }
    }
  }
}
