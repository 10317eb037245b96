package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import strikeoff.check.Checked;
import strikeoff.propose.Proposal;
import strikeoff.propose.TwoClocks;
import strikeoff.report.drawing.ClockChart;
import strikeoff.report.page.Figure;
import strikeoff.report.page.ProposalPage;

/** Puts the page of a proposed run together. */
final class ProposalPages {

  private ProposalPages() {}

  static ProposalPage of(Proposal.Found found) {
    Checked.Judged after = found.after();
    TwoClocks clocks = TwoClocks.of(found);
    List<Figure> figures = new ArrayList<>();
    found.ends().ifPresent(end -> figures.add(new Figure("Your run as written ends", end.text())));
    figures.add(
        new Figure(
            "This one ends",
            found.finish().text(),
            found.slowFinish().equals(found.finish())
                ? "also where films dry slowly"
                : "where films dry slowly " + found.slowFinish().text()));
    String bound = found.bound().finish().text();
    figures.add(
        found
            .bound()
            .advised()
            .map(advised -> new Figure("No runs end before", bound, advised.text()))
            .orElse(new Figure("No run ends before", bound)));
    found
        .saved()
        .ifPresent(
            saved -> figures.add(new Figure("Saved", saved.text(), "of the room's opening hours")));
    return new ProposalPage(
        Assets.head(PageMark.PROPOSE, after.plan().title() + ": a run", Assets.PLAN_SCRIPT),
        after.plan().title(),
        after.file(),
        sentence(found),
        figures,
        clocks.today().isEmpty()
            ? null
            : ClockChart.of(clocks, clocks.today(), "Your run by the clock"),
        ClockChart.of(clocks, clocks.proposed(), "The proposed run by the clock"),
        found.moved(),
        found.proof(),
        known(found),
        run(after));
  }

  private static String sentence(Proposal.Found found) {
    String ends = "This run ends " + found.finish().when();
    return found.isAsItWas()
        ? "Keep yours: no run was found that ends sooner."
        : !found.cured().isEmpty()
            ? ends + ", " + found.endsBut() + "."
            : found.ends().map(end -> ends + "; yours ends " + end.when() + ".").orElse(ends + ".");
  }

  private static List<String> known(Proposal.Found found) {
    List<String> known = new ArrayList<>();
    known.addAll(found.cured());
    known.addAll(found.notes());
    known.add(found.after().sentence());
    known.addAll(found.advice());
    return known;
  }

  private static String run(Checked.Judged after) {
    List<String> lines = after.source().lines();
    int from = 0;
    while (from < lines.size() && !lines.get(from).startsWith("run:")) {
      from++;
    }
    int to = from + 1;
    while (to < lines.size()
        && (lines.get(to).isBlank() || " #-".indexOf(lines.get(to).charAt(0)) >= 0)) {
      to++;
    }
    return String.join("\n", lines.subList(from, Math.min(to, lines.size()))).strip();
  }
}
