package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import strikeoff.report.page.DaySheet.Job;
import strikeoff.report.page.DaySheet.Line;
import strikeoff.report.page.DaySheet.Spot;
import strikeoff.report.page.DaySheet.Where;

/**
 * Spreads a day's jobs over sheets of paper. How much fits a page is reckoned from the words, for
 * the smaller of A4 and Letter; a job that is longer than a page is carried on over the next.
 */
final class SheetPages {

  /** Height for jobs on a page and of their parts, in millimetres at the sheet's type size. */
  private static final double PAGE = 204;

  private static final double WARNING = 11;

  /** Where the cloth lies when the sheet begins, in up to two rows. */
  private static final double CLOTH = 11;

  private static final double JOB = 6.8;
  private static final double LINE = 6.1;
  private static final double SMALL = 5.2;
  private static final double SPACE = 1.5;
  private static final int JOB_LETTERS = 62;
  private static final int LINE_LETTERS = 44;
  private static final int WIDE_LETTERS = 64;
  private static final int NEXT_LETTERS = 36;
  private static final int SMALL_LETTERS = 84;

  /** What a spot takes besides its letters. */
  private static final int SPOT_LETTERS = 6;

  /** Spots stand in boxes, which take more height than words and do not break. */
  private static final double SPOTS = 6.3;

  private static final int SPOTS_LETTERS = 72;

  private final double room;

  private SheetPages(double room) {
    this.room = room;
  }

  /**
   * @param warned true if each page is headed by a warning
   * @param minded what is to be minded that day, of which each page tells what concerns it
   */
  static List<List<Job>> of(List<Job> jobs, boolean warned, String minded) {
    double cautions = minded.isEmpty() ? 0 : SMALL * (1 + rows(minded, SMALL_LETTERS));
    return new SheetPages(PAGE - CLOTH - (warned ? WARNING : 0) - cautions).pages(jobs);
  }

  private List<List<Job>> pages(List<Job> jobs) {
    List<List<Job>> pages = new ArrayList<>();
    List<Job> page = new ArrayList<>();
    double used = 0;
    for (Job job : jobs) {
      for (Job part : height(job) > room ? parts(job) : List.of(job)) {
        double needs = height(part);
        if (used + needs > room && !page.isEmpty()) {
          pages.add(page);
          page = new ArrayList<>();
          used = 0;
        }
        page.add(part);
        used += needs;
      }
    }
    pages.add(page);
    return pages;
  }

  /** First where everything lies, then what is done there; as many of each as a page takes. */
  private List<Job> parts(Job job) {
    List<Job> parts = new ArrayList<>();
    Where where = job.where();
    List<Spot> spots = new ArrayList<>();
    for (Spot spot : where.spots()) {
      spots.add(spot);
      if (height(part(job, parts, new Where(where.words(), spots, where.frame()), List.of()))
          > room) {
        Spot over = spots.remove(spots.size() - 1);
        parts.add(part(job, parts, new Where(where.words(), spots, where.frame()), List.of()));
        spots.clear();
        spots.add(over);
      }
    }
    Where rest = spots.isEmpty() ? Where.NOWHERE : new Where(where.words(), spots, where.frame());
    List<Line> lines = new ArrayList<>();
    for (Line line : job.lines()) {
      lines.add(line);
      boolean severable = lines.size() > 1 || !rest.spots().isEmpty();
      if (severable && height(part(job, parts, rest, lines)) > room) {
        Line over = lines.remove(lines.size() - 1);
        parts.add(part(job, parts, rest, lines));
        rest = Where.NOWHERE;
        lines.clear();
        lines.add(over);
      }
    }
    Job last = part(job, parts, rest, lines);
    parts.add(new Job(last.number(), last.what(), last.where(), last.lines(), job.after()));
    return parts;
  }

  private static Job part(Job job, List<Job> before, Where where, List<Line> lines) {
    String what = before.isEmpty() ? job.what() : job.what() + ", carried on";
    return new Job(job.number(), what, where, lines, "");
  }

  private static double height(Job job) {
    int spots = 0;
    for (Spot spot : job.where().spots()) {
      spots += spot.number().length() + spot.at().length() + SPOT_LETTERS;
    }
    double height =
        3 * SPACE
            + JOB * rows(job.what(), JOB_LETTERS)
            + SPOTS * rows(job.where().words().length() + spots, SPOTS_LETTERS)
            + SMALL * rows(job.where().frame(), SMALL_LETTERS)
            + SMALL * rows(job.after(), SMALL_LETTERS);
    for (Line line : job.lines()) {
      int left = line.next().isEmpty() ? WIDE_LETTERS : LINE_LETTERS;
      int rows =
          Math.max(
              rows(line.what() + " " + line.with() + " · " + line.who(), left),
              rows(line.next(), NEXT_LETTERS));
      height += SPACE + LINE * rows;
    }
    return height;
  }

  private static int rows(String words, int letters) {
    return rows(words.length(), letters);
  }

  private static int rows(int length, int letters) {
    return (length + letters - 1) / letters;
  }
}
