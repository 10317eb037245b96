package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import strikeoff.care.Care;
import strikeoff.plan.Hours;
import strikeoff.plan.PrintPlan;
import strikeoff.report.page.DaySheet;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Timeline;

/**
 * The run as sheets for the wall, each one page of paper. How many jobs fit a page is reckoned from
 * their words, for the smaller of A4 and Letter.
 */
final class DaySheets {

  /** Height for jobs on a page and of their parts, in millimetres at the sheet's type size. */
  private static final double PAGE = 198;

  private static final double JOB = 6.6;
  private static final double LINE = 5.9;
  private static final double SMALL = 5;
  private static final double SPACE = 1.4;
  private static final int JOB_LETTERS = 68;
  private static final int LINE_LETTERS = 46;
  private static final int WIDE_LETTERS = 66;
  private static final int NEXT_LETTERS = 40;
  private static final int SMALL_LETTERS = 88;

  private DaySheets() {}

  static List<DaySheet> of(PrintPlan plan, Timeline run, Care care) {
    Map<Integer, List<Work>> byDay = new TreeMap<>();
    for (Work work : Work.of(run)) {
      byDay.computeIfAbsent(work.start().day(), day -> new ArrayList<>()).add(work);
    }
    List<DaySheet> sheets = new ArrayList<>();
    byDay.forEach(
        (day, blocks) -> {
          Set<Integer> steps =
              blocks.stream().map(w -> w.first().step()).collect(Collectors.toSet());
          String worn = Cautions.worn(care, steps);
          sheets.addAll(day(plan, day, DayJobs.of(plan, day, blocks), worn));
        });
    return sheets;
  }

  private static List<DaySheet> day(PrintPlan plan, int day, List<DaySheet.Job> jobs, String worn) {
    List<List<DaySheet.Job>> pages = new ArrayList<>();
    List<DaySheet.Job> page = new ArrayList<>();
    double used = 0;
    for (DaySheet.Job job : jobs) {
      double needs = height(job);
      if (used + needs > PAGE && !page.isEmpty()) {
        pages.add(page);
        page = new ArrayList<>();
        used = 0;
      }
      page.add(job);
      used += needs;
    }
    pages.add(page);
    List<DaySheet> sheets = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      sheets.add(
          new DaySheet(
              title(plan, day),
              pages.size() == 1 ? "" : "sheet " + (i + 1) + " of " + pages.size(),
              plan.title() + " · " + String.join(", ", plan.crew().names()),
              worn,
              pages.get(i)));
    }
    return sheets;
  }

  private static String title(PrintPlan plan, int day) {
    Hours.Day hours = plan.hours().of(day);
    String closes = hours.closes() == 24 * 60 ? "24:00" : Moment.of(1, hours.closes()).clock();
    return "Day " + day + ", " + Moment.of(1, hours.opens()).clock() + " to " + closes;
  }

  private static double height(DaySheet.Job job) {
    double height =
        3 * SPACE
            + JOB * rows(job.what(), JOB_LETTERS)
            + SMALL * rows(job.where(), SMALL_LETTERS)
            + SMALL * rows(job.after(), SMALL_LETTERS);
    for (DaySheet.Line line : job.lines()) {
      int left = line.next().isEmpty() ? WIDE_LETTERS : LINE_LETTERS;
      int rows =
          Math.max(rows(line.what() + " " + line.with(), left), rows(line.next(), NEXT_LETTERS));
      height += SPACE + LINE * rows;
    }
    return height;
  }

  private static int rows(String words, int letters) {
    return (words.length() + letters - 1) / letters;
  }
}
