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
   * @param where where on the cloth; {@link Where#NOWHERE} if nothing is placed
   * @param after when the cloth may be moved; empty if a line says so or nothing is printed
   */
  public record Job(int number, String what, Where where, List<Line> lines, String after) {

    public Job {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Where the placements of a job lie, as the tape shows it.
   *
   * @param words what is measured from where
   * @param spots each placement's measures, in the order of printing
   * @param frame where the frame goes from there; may be empty
   */
  public record Where(String words, List<Spot> spots, String frame) {

    public static final Where NOWHERE = new Where("", List.of(), "");

    public Where {
      spots = List.copyOf(spots);
    }
  }

  /**
   * One placement's measures.
   *
   * @param number the placement's
   */
  public record Spot(String number, String at) {}

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
