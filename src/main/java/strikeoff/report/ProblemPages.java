package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import strikeoff.check.Checked;
import strikeoff.document.Problem;
import strikeoff.report.page.ProblemPage;
import strikeoff.report.page.Quote;

/** Puts the page of a file together that can't be judged. */
final class ProblemPages {

  /** Nobody mends more before checking again. */
  private static final int MOST = 200;

  private ProblemPages() {}

  static ProblemPage of(Checked checked) {
    List<ProblemPage.Mistake> mistakes = new ArrayList<>();
    int more = 0;
    if (checked instanceof Checked.Unreadable unreadable) {
      unreadable.problems().stream()
          .limit(MOST)
          .forEach(problem -> mistakes.add(mistake(problem, unreadable.lines())));
      more = unreadable.problems().size() - mistakes.size();
    }
    return new ProblemPage(
        Assets.head(
            PageMark.CHECK, checked.file() + ": " + checked.verdict().text(), Assets.PLAN_SCRIPT),
        checked.file(),
        PlanPages.cssClass(checked.verdict()),
        checked.sentence(),
        mistakes,
        more);
  }

  private static ProblemPage.Mistake mistake(Problem problem, List<String> lines) {
    int line = problem.position().line();
    Quote quote = line <= lines.size() ? FindingCards.quote("", line, lines.get(line - 1)) : null;
    String place =
        "Line "
            + line
            + ", column "
            + problem.position().column()
            + (problem.path().text().isEmpty() ? "" : ": " + problem.path().spoken());
    return new ProblemPage.Mistake(place, problem.message(), quote);
  }
}
