package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strikeoff.plan.Hours;
import strikeoff.plan.PrintPlan;
import strikeoff.report.page.DaySheet;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Timeline;

/**
 * The run as sheets for the wall, one page of paper each. How many lines fit a page is reckoned
 * from the words, for the smaller of A4 and Letter.
 */
final class DaySheets {

  /** Text lines on a page at the sheet's type size. */
  private static final int PAGE = 40;

  private static final int LETTERS_A_LINE = 74;

  private DaySheets() {}

  static List<DaySheet> of(PrintPlan plan, Timeline run) {
    Map<Integer, List<Work>> byDay = new TreeMap<>();
    for (Work work : Work.of(run)) {
      byDay.computeIfAbsent(work.start().day(), day -> new ArrayList<>()).add(work);
    }
    List<DaySheet> sheets = new ArrayList<>();
    byDay.forEach((day, blocks) -> sheets.addAll(day(plan, day, blocks)));
    return sheets;
  }

  private static List<DaySheet> day(PrintPlan plan, int day, List<Work> blocks) {
    List<List<DaySheet.Line>> pages = new ArrayList<>();
    List<DaySheet.Line> page = new ArrayList<>();
    int used = 0;
    int number = 0;
    for (Work work : blocks) {
      DaySheet.Line line = line(plan, work, ++number);
      int needs = textLines(line);
      if (used + needs > PAGE && !page.isEmpty()) {
        pages.add(page);
        page = new ArrayList<>();
        used = 0;
      }
      page.add(line);
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
              "",
              pages.get(i)));
    }
    return sheets;
  }

  private static String title(PrintPlan plan, int day) {
    Hours.Day hours = plan.hours().of(day);
    return "Day "
        + day
        + ", "
        + Moment.of(1, hours.opens()).clock()
        + " to "
        + (hours.closes() == 24 * 60 ? "24:00" : Moment.of(1, hours.closes()).clock());
  }

  private static DaySheet.Line line(PrintPlan plan, Work work, int number) {
    List<DaySheet.Detail> details = new ArrayList<>(WorkWords.details(plan, work));
    String people = WorkWords.people(work);
    if (plan.crew().names().size() > 1 && !people.isEmpty()) {
      details.add(new DaySheet.Detail("Who", people));
    }
    if (work.end().since(work.start()).minutes() >= 1) {
      details.add(
          new DaySheet.Detail(
              "Until",
              (work.end().day() == work.start().day() ? work.end().clock() : work.end().text())
                  + ", "
                  + work.end().since(work.start()).text()));
    }
    return new DaySheet.Line(
        number,
        work.start().clock(),
        WorkWords.cssClass(work),
        WorkWords.title(plan, work),
        details);
  }

  private static int textLines(DaySheet.Line line) {
    Map<String, Integer> letters = new LinkedHashMap<>();
    int all = 0;
    for (DaySheet.Detail detail : line.details()) {
      all += detail.label().length() + detail.words().length() + 5;
      letters.merge(detail.label(), 1, Integer::sum);
    }
    return 1 + line.what().length() / LETTERS_A_LINE + (all + LETTERS_A_LINE - 1) / LETTERS_A_LINE;
  }
}
