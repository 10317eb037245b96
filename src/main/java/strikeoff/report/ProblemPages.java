package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import strikeoff.check.Checked;
import strikeoff.plan.Problem;
import strikeoff.report.page.ProblemPage;
import strikeoff.report.page.Quote;

/** Puts the page of a file together that can't be judged. */
final class ProblemPages {

  private ProblemPages() {}

  static ProblemPage of(Checked checked) {
    List<ProblemPage.Mistake> mistakes = new ArrayList<>();
    if (checked instanceof Checked.Unreadable unreadable) {
      for (Problem problem : unreadable.problems()) {
        mistakes.add(mistake(problem, unreadable.lines()));
      }
    }
    return new ProblemPage(
        Assets.head(checked.file() + ": " + checked.verdict().text(), Assets.PLAN_SCRIPT),
        checked.file(),
        PlanPages.cssClass(checked.verdict()),
        checked.sentence(),
        mistakes);
  }

  private static ProblemPage.Mistake mistake(Problem problem, List<String> lines) {
    int line = problem.position().line();
    Quote quote = line <= lines.size() ? FindingCards.quote("", line, lines.get(line - 1)) : null;
    String place =
        "Line "
            + line
            + ", column "
            + problem.position().column()
            + (problem.path().text().isEmpty() ? "" : ": " + problem.path().text());
    return new ProblemPage.Mistake(place, problem.message(), quote);
  }
}
