package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import strikeoff.check.Checked;
import strikeoff.plan.Hours;
import strikeoff.plan.PrintPlan;
import strikeoff.report.drawing.Words;
import strikeoff.report.page.DaySheet;
import strikeoff.timeline.Moment;

/** The run as sheets for the wall, each one page of paper. */
final class DaySheets {

  private static final int LONGEST_TITLE = 60;

  private DaySheets() {}

  static List<DaySheet> of(Checked.Judged judged) {
    Map<Integer, List<Work>> byDay = new TreeMap<>();
    for (Work work : Work.of(judged.facts().timeline())) {
      byDay.computeIfAbsent(work.start().day(), day -> new ArrayList<>()).add(work);
    }
    List<DaySheet> sheets = new ArrayList<>();
    byDay.forEach(
        (day, blocks) -> {
          Set<Integer> steps =
              blocks.stream().map(w -> w.first().step()).collect(Collectors.toSet());
          String worn = Cautions.worn(judged.facts().care(), steps);
          sheets.addAll(day(judged.plan(), day, DayJobs.of(judged, day, blocks), worn));
        });
    return sheets;
  }

  private static List<DaySheet> day(PrintPlan plan, int day, List<DaySheet.Job> jobs, String worn) {
    List<List<DaySheet.Job>> pages = SheetPages.of(jobs);
    List<DaySheet> sheets = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      sheets.add(
          new DaySheet(
              title(plan, day),
              pages.size() == 1 ? "" : "sheet " + (i + 1) + " of " + pages.size(),
              Words.shortened(plan.title(), LONGEST_TITLE)
                  + " · "
                  + Words.shortened(String.join(", ", plan.crew().names()), LONGEST_TITLE),
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
}
