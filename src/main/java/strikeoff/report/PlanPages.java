package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.plan.PrintPlan;
import strikeoff.report.drawing.ClothDrawing;
import strikeoff.report.drawing.Patches;
import strikeoff.report.drawing.RunChart;
import strikeoff.report.page.Cell;
import strikeoff.report.page.Figure;
import strikeoff.report.page.PlanPage;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Timeline;

/** Puts the page of a judged plan together. */
final class PlanPages {

  private PlanPages() {}

  static PlanPage of(Checked.Judged judged) {
    PrintPlan plan = judged.plan();
    Timeline run = judged.facts().timeline();
    FindingCards findings = FindingCards.of(judged.findings(), judged.facts().layout());
    return new PlanPage(
        Assets.head(judged.plan().title() + ": " + judged.verdict().text(), Assets.PLAN_SCRIPT),
        plan.title(),
        judged.file(),
        cssClass(judged.verdict()),
        judged.sentence(),
        figures(judged),
        plan.notes(),
        findings.groups(),
        findings.accepted(),
        judged.faults().stream().map(f -> f.rule() + ": " + f.what()).toList(),
        plan.pastes().values().stream()
            .map(p -> Cell.of(Patches.of(p.colour()), p.name(), ""))
            .toList(),
        ClothDrawing.of(
            plan,
            judged.facts().layout(),
            run,
            judged.facts().swatches().motifs(),
            findings.marks()),
        Stages.of(run),
        RunChart.of(plan, run),
        DaySheets.of(judged),
        FactTables.of(judged),
        FactTables.assumptions(plan, judged.policies()),
        Cautions.of(judged.facts().care()));
  }

  static String cssClass(Verdict verdict) {
    return verdict.text().replace(' ', '-');
  }

  private static List<Figure> figures(Checked.Judged judged) {
    Timeline run = judged.facts().timeline();
    List<Figure> figures = new ArrayList<>();
    if (!run.tasks().isEmpty()) {
      figures.add(new Figure("Starts", run.start().text()));
      figures.add(new Figure("Ends", run.finish().text()));
      figures.add(new Figure("Hands-on", run.handsOn().text()));
      figures.add(new Figure("Waiting", run.waiting().text()));
      figures.add(new Figure("Impressions", Integer.toString(run.impressions().size())));
      figures.add(new Figure("Sets", Long.toString(sets(run.impressions()))));
    }
    figures.add(
        new Figure("Placements", Integer.toString(judged.facts().layout().placements().size())));
    return figures;
  }

  private static long sets(List<Impression> impressions) {
    return impressions.stream().map(i -> List.of(i.step(), i.set())).distinct().count();
  }
}
