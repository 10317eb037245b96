package strikeoff.report;

import java.util.List;
import strikeoff.check.Verdict;
import strikeoff.findings.Severity;
import strikeoff.report.page.Listed;
import strikeoff.report.page.SheetsIndexPage;
import strikeoff.units.Phrase;

/** Puts the page together that leads to the sheets of a batch. */
final class SheetsIndexPages {

  private SheetsIndexPages() {}

  static SheetsIndexPage of(String title, List<IndexEntry> entries) {
    List<IndexEntry> hung = entries.stream().filter(e -> !e.link().isEmpty()).toList();
    long spoilt = hung.stream().filter(e -> e.verdict() != Verdict.PRINTABLE).count();
    return new SheetsIndexPage(
        Assets.head(PageMark.SHEETS, title + ": sheets for the wall", Assets.PLAN_SCRIPT),
        title,
        "Sheets of "
            + hung.size()
            + (hung.size() == 1 ? " plan" : " plans")
            + (spoilt == 0 ? "." : ", " + spoilt + " of them not printable as planned."),
        new Listed<>(entries.stream().map(SheetsIndexPages::row).toList(), 0));
  }

  private static SheetsIndexPage.Row row(IndexEntry entry) {
    return new SheetsIndexPage.Row(
        entry.file(),
        entry.title(),
        entry.link(),
        PlanPages.cssClass(entry.verdict()),
        Phrase.capital(entry.verdict().text(entry.accepted(Severity.STOP))),
        entry.finishes(),
        entry.trouble());
  }
}
