package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import strikeoff.report.page.DaySheet.Job;
import strikeoff.report.page.DaySheet.Line;
import strikeoff.report.page.DaySheet.Spot;
import strikeoff.report.page.DaySheet.Where;

/**
 * Spreads a day's jobs over sheets of paper. How much fits a page is reckoned from the words, for
 * the smaller of A4 and Letter; a job that is longer than a page is carried on over the next.
 */
final class SheetPages {

  /** What a spot takes besides its letters. */
  private static final int SPOT_LETTERS = 6;

  private static final double SPACE = 1.5;

  /** So much of a page is not left empty if a job can be begun there. */
  private static final double MUCH = 0.25;

  /**
   * In millimetres: a page that is filled to its end by a beginning stands no error of the
   * reckoning.
   */
  private static final double SLACK = 8;

  /** Of the map that every page has room for, in millimetres, and what stands around it. */
  private static final double MAP = 22;

  private static final double AROUND = 4;

  /** Where a job's place is told for a single line, that line may as well wait. */
  private static final int WORTH_BEGINNING = 2;

  /**
   * A size of type: heights in millimetres, and how many letters fill a row.
   *
   * @param page for jobs, on a page without a warning
   * @param cloth where the cloth lies when the sheet begins, in up to two rows
   * @param spots which stand in boxes, that take more height than words and do not break
   * @param map of the cloth, where something is printed
   * @param below true if what comes next stands below what is done, not beside it
   */
  private record Type(
      double page,
      double warning,
      double cloth,
      double job,
      double line,
      double small,
      double spots,
      double map,
      int jobLetters,
      int lineLetters,
      int wideLetters,
      int nextLetters,
      int smallLetters,
      int spotsLetters,
      boolean below) {}

  private static final Type REPORT =
      new Type(218, 11, 11, 6.8, 6.1, 5.2, 6.3, 0, 62, 44, 64, 36, 84, 72, false);

  /** 16 points and more; beside each line there is room to write. */
  private static final Type WALL =
      new Type(224, 20, 12, 8.2, 7.1, 6.3, 7.2, MAP + AROUND, 54, 38, 38, 44, 74, 66, true);

  private final Type type;

  /** Of a page that nothing is to be minded on. */
  private final double most;

  /** What is to be minded in some jobs. */
  private final Function<List<Job>, String> minded;

  /** Who is not named line by line. */
  private final String whose;

  private SheetPages(Type type, boolean warned, Function<List<Job>, String> minded, String whose) {
    this.type = type;
    this.whose = whose;
    this.minded = minded;
    this.most = type.page() - type.cloth() - (warned ? type.warning() : 0);
  }

  /**
   * @param warned true if each page is headed by a warning
   * @param minded what is to be minded in a page's jobs
   */
  static List<List<Job>> of(List<Job> jobs, boolean warned, Function<List<Job>, String> minded) {
    return new SheetPages(REPORT, warned, minded, "").pages(jobs);
  }

  /**
   * The same for type that is read at a metre.
   *
   * @param whose sheets they are; empty if nobody's own
   */
  static List<List<Job>> forTheWall(
      List<Job> jobs, boolean warned, Function<List<Job>, String> minded, String whose) {
    return new SheetPages(WALL, warned, minded, whose).pages(jobs);
  }

  /**
   * How high maps on a wall page may be, in millimetres: what the page leaves is theirs, in equal
   * parts.
   */
  static double mapHeight(
      List<Job> page, boolean warned, Function<List<Job>, String> minded, String whose) {
    SheetPages pages = new SheetPages(WALL, warned, minded, whose);
    long maps = page.stream().filter(job -> !job.prints().placements().isEmpty()).count();
    double used = pages.first(page.get(0)) + page.stream().mapToDouble(pages::height).sum();
    double left = pages.room(page, List.of()) - used - SLACK;
    return MAP + Math.max(0, maps == 0 ? 0 : left / maps);
  }

  /** Jobs are begun on the page before only where that spares a page. */
  private List<List<Job>> pages(List<Job> jobs) {
    List<List<Job>> whole = pages(jobs, false);
    List<List<Job>> begun = pages(jobs, true);
    return begun.size() < whole.size() ? begun : whole;
  }

  private List<List<Job>> pages(List<Job> jobs, boolean begin) {
    List<List<Job>> pages = new ArrayList<>();
    List<Job> page = new ArrayList<>();
    double used = 0;
    for (Job job : jobs) {
      for (Job part : parts(job, left(page, used, job, begin))) {
        double needs = height(part);
        if (used + needs > room(page, List.of(part)) && !page.isEmpty()) {
          pages.add(page);
          page = new ArrayList<>();
        }
        if (page.isEmpty()) {
          used = first(part);
        }
        page.add(part);
        used += needs;
      }
    }
    pages.add(page);
    return settled(pages);
  }

  /** What is to be ready another day needs no page of its own where one before has room for it. */
  private List<List<Job>> settled(List<List<Job>> pages) {
    List<Job> ahead = pages.get(pages.size() - 1);
    if (!ahead.stream().allMatch(Job::isAhead)) {
      return pages;
    }
    for (int i = pages.size() - 2; i >= 0; i--) {
      List<Job> page = new ArrayList<>(pages.get(i));
      page.addAll(ahead);
      double needs = first(page.get(0)) + page.stream().mapToDouble(this::height).sum();
      if (needs <= room(pages.get(i), ahead)) {
        pages.set(i, page);
        pages.remove(pages.size() - 1);
        return pages;
      }
    }
    return pages;
  }

  /** What a job may take of the page where it is begun. */
  private double left(List<Job> page, double used, Job job, boolean begin) {
    return begin && !page.isEmpty()
        ? room(page, List.of(job)) - used
        : room(List.of(), List.of(job)) - first(job);
  }

  /** On a page of these jobs and more, for all of them. */
  private double room(List<Job> page, List<Job> more) {
    List<Job> all = new ArrayList<>(page);
    all.addAll(more);
    String words = minded.apply(all);
    return words.isEmpty() ? most : most - type.small() * (1 + rows(words, type.smallLetters()));
  }

  /**
   * A job in as few parts as pages take. It is begun on the page before rather than leave much of
   * that empty, if more than a beginning finds room there.
   *
   * @param left of the page that is begun
   */
  private List<Job> parts(Job job, double left) {
    if (height(job) <= left) {
      return List.of(job);
    }
    double room = room(List.of(), List.of(job));
    if (left < room && left >= room * MUCH) {
      List<Job> parts = parts(job, left - SLACK, room);
      int begun = parts.get(0).lines().size();
      if (height(parts.get(0)) <= left && begun >= WORTH_BEGINNING) {
        return parts;
      }
    }
    double own = room - first(job);
    return height(job) > own ? parts(job, own, own) : List.of(job);
  }

  /** What is done first is told in the head of a sheet for the wall, and may take a second row. */
  private double first(Job job) {
    return type.below()
        ? type.job() * (rows("First, at 09:00: " + job.title() + ".", type.jobLetters()) - 1)
        : 0;
  }

  /** First where everything lies, then what is done there; as many of each as a page takes. */
  private List<Job> parts(Job job, double firstRoom, double room) {
    List<Job> parts = new ArrayList<>();
    Where where = job.where();
    List<Spot> spots = new ArrayList<>();
    for (Spot spot : where.spots()) {
      spots.add(spot);
      if (height(part(job, parts, new Where(where.words(), spots, where.frame()), List.of()))
          > (parts.isEmpty() ? firstRoom : room)) {
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
      if (severable
          && height(part(job, parts, rest, lines)) > (parts.isEmpty() ? firstRoom : room)) {
        Line over = lines.remove(lines.size() - 1);
        parts.add(part(job, parts, rest, lines));
        rest = Where.NOWHERE;
        lines.clear();
        lines.add(over);
      }
    }
    parts.add(rest(job, rest, lines, job.after()));
    return parts;
  }

  private static Job part(Job job, List<Job> before, Where where, List<Line> lines) {
    return before.isEmpty() ? job.begun(where, lines) : rest(job, where, lines, "");
  }

  private static Job rest(Job job, Where where, List<Line> lines, String after) {
    return job.carriedOn(where, lines, after).withoutMap();
  }

  private double height(Job job) {
    int spots = 0;
    for (Spot spot : job.where().spots()) {
      spots += spot.number().length() + spot.at().length() + SPOT_LETTERS;
    }
    boolean mapped = type.map() > 0 && !job.prints().placements().isEmpty();
    double height =
        3 * SPACE
            + type.job() * rows(job.title(), type.jobLetters())
            + (mapped ? type.map() : 0)
            + (type.map() > 0 ? type.small() * rows(job.prints().dries(), type.smallLetters()) : 0)
            + type.spots() * rows(job.where().words().length() + spots, type.spotsLetters())
            + type.small() * rows(job.where().frame(), type.smallLetters())
            + type.small() * rows(job.after(), type.smallLetters());
    for (String mind : job.mind()) {
      height += type.small() * rows(mind, type.smallLetters());
    }
    for (Line line : job.lines()) {
      int left = line.next().isEmpty() ? type.wideLetters() : type.lineLetters();
      int does = rows(said(line), left);
      int next = rows(line.next(), type.nextLetters());
      height +=
          SPACE
              + (type.below()
                  ? type.line() * does + type.small() * next
                  : type.line() * Math.max(does, next));
    }
    return height;
  }

  private String said(Line line) {
    return line.what()
        + (line.with().isEmpty() ? "" : " " + line.with())
        + (line.who().isEmpty() || line.who().equals(whose) ? "" : " · " + line.who());
  }

  private static int rows(String words, int letters) {
    return rows(words.length(), letters);
  }

  private static int rows(int length, int letters) {
    return (length + letters - 1) / letters;
  }
}
