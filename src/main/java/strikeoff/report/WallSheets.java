package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import strikeoff.care.Care;
import strikeoff.check.Checked;
import strikeoff.day.Moment;
import strikeoff.day.facts.Timeline;
import strikeoff.layout.Layout;
import strikeoff.plan.Hours;
import strikeoff.plan.PrintPlan;
import strikeoff.report.drawing.FittedWords;
import strikeoff.report.drawing.StepMap;
import strikeoff.report.page.DaySheet;
import strikeoff.report.page.DaySheet.Course;
import strikeoff.report.page.DaySheet.Job;
import strikeoff.report.page.DaySheet.Line;
import strikeoff.report.page.WallPage;
import strikeoff.speech.TableSpeech;

/**
 * The run as sheets that are read at a metre by somebody with wet gloves: for each day and person
 * one page of paper, two where morning and afternoon don't fit one.
 */
final class WallSheets {

  private static final int LONGEST_TITLE = 60;

  /** A line below a map, in millimetres. */
  private static final double COUNTED = 6;

  private static final int NOON = 12 * 60;

  private final Checked.Judged judged;
  private final DaySheet.Warning warning;
  private final WhereCloth cloth;

  private WallSheets(Checked.Judged judged) {
    this.judged = judged;
    this.warning = DaySheets.warning(judged);
    this.cloth = new WhereCloth(judged);
  }

  static WallPage of(Checked.Judged judged) {
    return new WallPage(
        Assets.head(
            PageMark.SHEETS,
            judged.plan().title() + ": sheets for the wall",
            Assets.WALL_STYLE,
            Assets.WALL_SCRIPT),
        FittedWords.shortened(judged.plan().title(), LONGEST_TITLE),
        judged.file(),
        MaterialsPages.of(MaterialsLists.of(judged)),
        new WallSheets(judged).sheets());
  }

  private List<WallPage.Sheet> sheets() {
    Timeline run = judged.facts().timeline();
    Map<Integer, List<WorkBlock>> days = new TreeMap<>();
    for (WorkBlock work : WorkBlock.of(run)) {
      days.computeIfAbsent(work.start().day(), day -> new ArrayList<>()).add(work);
    }
    List<WallPage.Sheet> sheets = new ArrayList<>();
    days.forEach(
        (day, blocks) -> {
          List<String> people =
              judged.plan().crew().names().stream()
                  .filter(name -> blocks.stream().anyMatch(b -> WorkWords.people(b).contains(name)))
                  .toList();
          if (people.size() < 2) {
            String alone = judged.plan().crew().names().size() > 1 ? String.join("", people) : "";
            sheets.addAll(day(day, alone, DayJobs.of(judged, day, blocks)));
          } else {
            for (OwnTasks hers : OwnTasks.of(day, people, run)) {
              List<WorkBlock> own =
                  blocks.stream().flatMap(block -> block.of(hers::holds, run).stream()).toList();
              sheets.addAll(day(day, hers.person(), DayJobs.of(judged, day, own)));
            }
          }
        });
    return sheets;
  }

  /** In one page if that holds the day; else by half days, each in as many as it takes. */
  private List<WallPage.Sheet> day(int day, String who, List<Job> jobs) {
    Function<List<Job>, String> minded = this::minded;
    boolean warned = !warning.words().isEmpty();
    List<List<Job>> pages = SheetPages.forTheWall(jobs, warned, minded, who);
    if (pages.size() > 1) {
      Hours.Day hours = judged.plan().hours().of(day);
      int half = hours.breaks().isEmpty() ? NOON : hours.breaks().get(0).from();
      Moment noon = Moment.of(day, half);
      List<List<Job>> halves = new ArrayList<>();
      for (boolean morning : new boolean[] {true, false}) {
        List<Job> own = half(jobs, noon, morning);
        if (!own.isEmpty()) {
          halves.addAll(SheetPages.forTheWall(own, warned, minded, who));
        }
      }
      // A page more only for the sake of noon helps nobody.
      pages = halves.size() <= pages.size() ? halves : pages;
    }
    List<WallPage.Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      sheets.add(
          sheet(
              day,
              who,
              pages.size() == 1 ? "" : "page " + (i + 1) + " of " + pages.size(),
              pages.get(i)));
    }
    return sheets;
  }

  /**
   * Lines of each job that begin in that half of the day; jobs without lines stay by the others.
   */
  private static List<Job> half(List<Job> jobs, Moment noon, boolean morning) {
    List<Job> half = new ArrayList<>();
    boolean before = true;
    for (Job job : jobs) {
      List<Line> lines =
          job.lines().stream().filter(l -> l.begins().compareTo(noon) < 0 == morning).toList();
      if (!job.lines().isEmpty()) {
        before = job.lines().get(0).begins().compareTo(noon) < 0;
      }
      if (!lines.isEmpty() || job.lines().isEmpty() && before == morning) {
        if (lines.size() == job.lines().size()) {
          half.add(job);
        } else if (morning) {
          half.add(job.begun(job.where(), lines));
        } else {
          half.add(job.carriedOn(job.where(), lines, job.after()));
        }
      }
    }
    return half;
  }

  private WallPage.Sheet sheet(int day, String who, String part, List<Job> jobs) {
    Care care = judged.facts().care();
    Set<Integer> steps = DaySheets.steps(jobs);
    double map = SheetPages.mapHeight(jobs, !warning.words().isEmpty(), this::minded, who);
    return new WallPage.Sheet(
        DaySheets.title(judged.plan(), day, DaySheets.begins(jobs)),
        who,
        part,
        warning,
        first(jobs),
        DaySheets.begins(jobs).map(cloth::at).orElse(""),
        Cautions.worn(care, judged.plan(), steps),
        Cautions.minded(care, steps),
        jobs.stream().map(job -> work(job, map)).collect(Collectors.toList()));
  }

  private static String first(List<Job> jobs) {
    Optional<Line> first =
        jobs.stream()
            .flatMap(job -> job.lines().stream())
            .min((a, b) -> a.begins().compareTo(b.begins()));
    return first
        .flatMap(line -> jobs.stream().filter(job -> job.lines().contains(line)).findFirst())
        .map(job -> "First, at " + first.get().clock() + ": " + what(job, first.get()) + ".")
        .orElse("");
  }

  /** Of a job that is carried on its next line, or it might be done once more. */
  private static String what(Job job, Line line) {
    return job.course() == Course.CARRIED_ON ? line.what() : job.what();
  }

  private String minded(List<Job> jobs) {
    return Cautions.minded(judged.facts().care(), DaySheets.steps(jobs));
  }

  /**
   * @param most how high its map may be, mm
   */
  private WallPage.Work work(Job job, double most) {
    Set<Integer> printed = job.prints().placements();
    if (printed.isEmpty()) {
      return new WallPage.Work(job, null, "");
    }
    PrintPlan plan = judged.plan();
    Layout layout = judged.facts().layout();
    if (StepMap.counted(plan, layout, printed, most).isEmpty()) {
      return new WallPage.Work(job, StepMap.of(plan, layout, printed, most), "");
    }
    // What tells how they are counted stands in the map's room.
    double less = most - COUNTED;
    return new WallPage.Work(
        job,
        StepMap.of(plan, layout, printed, less),
        TableSpeech.counted(StepMap.counted(plan, layout, printed, less)));
  }
}
