package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import strikeoff.care.Care;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.day.Moment;
import strikeoff.findings.Finding;
import strikeoff.plan.Dates;
import strikeoff.plan.Hours;
import strikeoff.plan.PrintPlan;
import strikeoff.report.drawing.FittedWords;
import strikeoff.report.page.DaySheet;

/** The run as sheets for the wall, each one page of paper. */
final class DaySheets {

  private static final int LONGEST_TITLE = 60;

  private DaySheets() {}

  static List<DaySheet> of(Checked.Judged judged) {
    Map<Integer, List<WorkBlock>> byDay = new TreeMap<>();
    for (WorkBlock work : WorkBlock.of(judged.facts().timeline())) {
      byDay.computeIfAbsent(work.start().day(), day -> new ArrayList<>()).add(work);
    }
    List<DaySheet> sheets = new ArrayList<>();
    DaySheet.Warning warning = warning(judged);
    Map<Integer, List<DaySheet.Job>> jobs = StepNumbers.of(judged, byDay);
    RestingSteps.addTo(jobs, judged);
    byDay.forEach(
        (day, blocks) -> {
          Set<Integer> steps =
              blocks.stream().map(w -> w.first().step()).collect(Collectors.toSet());
          sheets.addAll(day(judged, day, jobs.get(day), steps, warning));
        });
    return sheets;
  }

  /** A sheet hangs alone: it must not look as if all were well. */
  static DaySheet.Warning warning(Checked.Judged judged) {
    long stops = judged.findings().stream().filter(Finding::blocks).count();
    int accepted = judged.acceptedStops();
    if (stops > 0) {
      return new DaySheet.Warning(
          "Not printable: "
              + (stops == 1 ? "1 stop is" : stops + " stops are")
              + " left in the plan. Don't print by this sheet.",
          true);
    }
    if (judged.verdict() == Verdict.NOT_CHECKED) {
      return new DaySheet.Warning(
          "Not wholly checked: a rule failed. Don't print by this sheet.", true);
    }
    return accepted == 0
        ? DaySheet.Warning.NONE
        : new DaySheet.Warning(
            "Printable with " + (accepted == 1 ? "1 stop" : accepted + " stops") + " accepted.",
            false);
  }

  private static List<DaySheet> day(
      Checked.Judged judged,
      int day,
      List<DaySheet.Job> jobs,
      Set<Integer> steps,
      DaySheet.Warning warning) {
    PrintPlan plan = judged.plan();
    Care care = judged.facts().care();
    WhereCloth cloth = new WhereCloth(judged);
    List<List<DaySheet.Job>> pages =
        SheetPages.of(jobs, !warning.words().isEmpty(), some -> Cautions.minded(care, steps(some)));
    List<DaySheet> sheets = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      sheets.add(
          new DaySheet(
              title(plan, day),
              pages.size() == 1 ? "" : "sheet " + (i + 1) + " of " + pages.size(),
              warning,
              FittedWords.shortened(plan.title(), LONGEST_TITLE)
                  + " · "
                  + FittedWords.shortened(String.join(", ", plan.crew().names()), LONGEST_TITLE),
              begins(pages.get(i)).map(cloth::at).orElse(""),
              Cautions.worn(care, plan, steps),
              Cautions.minded(care, steps(pages.get(i))),
              pages.get(i)));
    }
    return sheets;
  }

  static Set<Integer> steps(List<DaySheet.Job> jobs) {
    return jobs.stream().map(DaySheet.Job::step).collect(Collectors.toSet());
  }

  static Optional<Moment> begins(List<DaySheet.Job> jobs) {
    return jobs.stream()
        .flatMap(job -> job.lines().stream())
        .map(DaySheet.Line::begins)
        .min(Moment::compareTo);
  }

  /** The day, and from when on a page of it tells. */
  static String title(PrintPlan plan, int day, Optional<Moment> from) {
    return named(plan, day)
        + from.map(begins -> ", from " + begins.upToMinute().clock()).orElse("");
  }

  private static String named(PrintPlan plan, int day) {
    return "Day " + day + plan.hours().dates().of(day).map(on -> ", " + Dates.text(on)).orElse("");
  }

  private static String title(PrintPlan plan, int day) {
    Hours.Day hours = plan.hours().of(day);
    StringBuilder title =
        new StringBuilder(named(plan, day) + ", " + clock(hours.opens()) + " to ");
    for (Hours.Break rest : hours.breaks()) {
      title.append(clock(rest.from())).append(" and ").append(clock(rest.to())).append(" to ");
    }
    return title + clock(hours.closes());
  }

  private static String clock(int minute) {
    return minute == 24 * 60 ? "24:00" : Moment.of(1, minute).clock();
  }
}
