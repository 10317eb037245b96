package strikeoff.report.page;

import java.util.List;

/**
 * One page for the wall: a part of a day's work in numbered jobs.
 *
 * @param title day and hours
 * @param part {@code sheet 1 of 2}; empty if the day fits one
 * @param people the plan and who works
 * @param wear what to wear or to have at hand; may be empty
 */
public record DaySheet(String title, String part, String people, String wear, List<Job> jobs) {

  public DaySheet {
    jobs = List.copyOf(jobs);
  }

  /**
   * One set to print, or one other thing to do.
   *
   * @param number counted through the day
   * @param what the set with its placements, or the task
   * @param where the corners as the tape shows them; empty if nothing is placed
   * @param after when the cloth may be moved, or until when it takes; may be empty
   */
  public record Job(int number, String what, String where, List<Line> lines, String after) {

    public Job {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One thing to tick off.
   *
   * @param clock when it begins
   * @param what the instruction
   * @param with screen, pulls, person; may be empty
   * @param next when it may be touched again or what to wait for; may be empty
   */
  public record Line(String clock, String what, String with, String next) {}
}
