package strikeoff.report.page;

import java.util.List;

/**
 * One page for the wall: a part of a day's work in numbered lines.
 *
 * @param title day and hours
 * @param part {@code sheet 1 of 2}; empty if the day fits one
 * @param people who works
 * @param wear what to wear or to have at hand, from the plan's cautions; may be empty
 */
public record DaySheet(String title, String part, String people, String wear, List<Line> lines) {

  public DaySheet {
    lines = List.copyOf(lines);
  }

  /**
   * One thing to do.
   *
   * @param number counted through the day
   * @param clock when it begins
   * @param kind a class for the style sheet: print, wait, other
   * @param what the instruction
   * @param details where, with what, and when it may be touched
   */
  public record Line(int number, String clock, String kind, String what, List<Detail> details) {

    public Line {
      details = List.copyOf(details);
    }
  }

  /** A labelled detail. */
  public record Detail(String label, String words) {}
}
