package strikeoff.report.page;

import java.util.List;
import java.util.Set;
import strikeoff.day.Moment;

/**
 * One page for the wall: a part of a day's work in numbered jobs.
 *
 * @param title day and hours
 * @param part {@code sheet 1 of 2}; empty if the day fits one
 * @param warning why the plan isn't simply printable, if it isn't
 * @param people the plan and who works
 * @param cloth where the cloth lies when the sheet begins, or that it was taken up; empty if it was
 *     never laid before
 * @param wear what to wear or to have at hand that day; may be empty
 * @param mind what can hurt in the sheet's steps; may be empty
 */
public record DaySheet(
    String title,
    String part,
    Warning warning,
    String people,
    String cloth,
    String wear,
    String mind,
    List<Job> jobs) {

  public DaySheet {
    jobs = List.copyOf(jobs);
  }

  /**
   * What stands against printing by this sheet.
   *
   * @param words empty if nothing does
   * @param severe true if nothing may be printed
   */
  public record Warning(String words, boolean severe) {

    public static final Warning NONE = new Warning("", false);
  }

  /**
   * One set to print, or one other thing to do.
   *
   * @param number of the plan's step, as findings count; with a point and a number behind it where
   *     a step makes several jobs, counted through all days; empty for what comes before the first
   *     step
   * @param what the set with its placements, or the task
   * @param where where on the cloth; {@link Where#NOWHERE} if nothing is placed
   * @param after when the cloth may be moved; empty if a line says so or nothing is printed
   * @param prints what is printed; {@link Prints#NOTHING} for other work
   * @param course how it stands to its step's work
   * @param mind findings that strike in it, a sentence or two each
   */
  public record Job(
      String number,
      String what,
      Where where,
      List<Line> lines,
      String after,
      Prints prints,
      Course course,
      List<String> mind) {

    public Job {
      lines = List.copyOf(lines);
      mind = List.copyOf(mind);
    }

    /** The whole of a job that nothing is found in. */
    public Job(
        String number, String what, Where where, List<Line> lines, String after, Prints prints) {
      this(number, what, where, lines, after, prints, Course.WHOLE, List.of());
    }

    /** Work that prints nothing. */
    public Job(String number, String what, Where where, List<Line> lines, String after) {
      this(number, what, where, lines, after, Prints.NOTHING);
    }

    /** What it is, and that it was begun before. */
    public String title() {
      return course == Course.CARRIED_ON ? what + ", carried on" : what;
    }

    /** True for what is to be ready by the time that the step's own work begins. */
    public boolean isAhead() {
      return course == Course.AHEAD;
    }

    /**
     * The beginning of it, which alone tells what to mind.
     *
     * @param lines that are left of it
     */
    public Job begun(Where where, List<Line> lines) {
      return new Job(number, what, where, lines, "", prints.within(lines), course, mind);
    }

    /** The same, begun before. */
    public Job carriedOn(Where where, List<Line> lines, String after) {
      return new Job(
          number, what, where, lines, after, prints.within(lines), Course.CARRIED_ON, List.of());
    }

    /** The same where the map stands on a page before. */
    public Job withoutMap() {
      return new Job(number, what, where, lines, after, prints.withoutMap(), course, mind);
    }

    public Job minding(List<String> mind) {
      return new Job(number, what, where, lines, after, prints, course, mind);
    }

    /** The plan's step, or 0 for what comes before the first one. */
    public int step() {
      int point = number.indexOf('.');
      return number.isEmpty()
          ? 0
          : Integer.parseInt(point < 0 ? number : number.substring(0, point));
    }

    public Job numbered(String number) {
      return new Job(number, what, where, lines, after, prints, course, mind);
    }
  }

  /** How a job stands to the work of its step. */
  public enum Course {
    WHOLE,
    /** What is left of a job that was begun on a page before. */
    CARRIED_ON,
    /** What others do first, or somebody the evening before. */
    AHEAD
  }

  /**
   * What a job prints.
   *
   * @param placements ids of its placements
   * @param dries when the last of its films reaches each of the three limits, as a sentence; empty
   *     where the last pass is told elsewhere
   * @param last when the last pass begins
   */
  public record Prints(Set<Integer> placements, String dries, Moment last) {

    public static final Prints NOTHING = new Prints(Set.of(), "", Moment.of(1, 0));

    public Prints {
      placements = Set.copyOf(placements);
    }

    /** As told with some of the job's lines: when all of it is dry stands by the last pass. */
    Prints within(List<Line> lines) {
      return lines.stream().anyMatch(line -> line.begins().equals(last))
          ? this
          : new Prints(placements, "", last);
    }

    /** Its limits alone, where the map stands on the page already. */
    public Prints withoutMap() {
      return new Prints(Set.of(), dries, last);
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
   * @param begins when it begins
   * @param what the instruction
   * @param with screen, pulls, amounts; may be empty
   * @param who of several people does it; empty if there is one, or if nobody need
   * @param next when it may be touched again or what to wait for; may be empty
   */
  public record Line(Moment begins, String what, String with, String who, String next) {

    /** As waits before it are told: rounded up to the minute. */
    public String clock() {
      return begins.upToMinute().clock();
    }
  }
}
