package strikeoff.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.findings.PolicyChange;
import strikeoff.plan.Dates;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.report.drawing.ClothDrawing;
import strikeoff.report.drawing.ColourSigns;
import strikeoff.report.drawing.Patches;
import strikeoff.report.drawing.RunChart;
import strikeoff.report.page.Cell;
import strikeoff.report.page.Figure;
import strikeoff.report.page.Listed;
import strikeoff.report.page.PlanPage;
import strikeoff.speech.DaySpeech;
import strikeoff.units.Measures;

/** Puts the page of a judged plan together. */
final class PlanPages {

  private PlanPages() {}

  /**
   * @param pictures false to draw no film
   */
  static PlanPage of(Checked.Judged judged, boolean pictures) {
    PrintPlan plan = judged.plan();
    Timeline run = judged.facts().timeline();
    ColourSigns signs = ColourSigns.of(plan, judged.facts().swatches(), pictures);
    FindingCards findings = FindingCards.of(judged.findings(), judged.facts().layout());
    return new PlanPage(
        Assets.head(
            PageMark.CHECK,
            judged.plan().title()
                + ": "
                + judged.verdict().text(judged.acceptedStops())
                + judged.narrowed().map(n -> "; " + n.counted()).orElse(""),
            Assets.PLAN_SCRIPT),
        plan.title(),
        judged.file(),
        cssClass(judged.verdict()),
        judged.sentence(),
        figures(judged),
        plan.notes(),
        findings.groups(),
        Listed.of(findings.accepted(), Listed.ROWS),
        judged.acceptedStops(),
        judged.narrowed().map(n -> n.text() + ".").orElse(""),
        remarks(judged),
        judged.changes().stream().map(PolicyChange::text).toList(),
        judged.failedRules().stream().map(f -> f.rule() + ": " + f.what()).toList(),
        Listed.of(
            plan.pastes().values().stream()
                .map(p -> judged.facts().swatches().of(p.name()))
                .map(s -> Cell.of(Patches.of(s.onGround()), s.paste(), ""))
                .toList(),
            Listed.BLOCKS),
        ClothDrawing.of(
            plan, judged.facts().layout(), run, judged.facts().swatches(), signs, findings.marks()),
        signs.words(),
        Listed.of(FilmSheets.of(judged, signs, findings), Listed.BLOCKS),
        Listed.of(Stages.of(run, judged.plan().measures()), Listed.STAGES),
        Listed.of(RunChart.of(plan, run), Listed.BLOCKS),
        Listed.of(DaySheets.of(judged), Listed.BLOCKS),
        MaterialsLists.of(judged),
        FactTables.of(judged),
        FactTables.assumptions(plan, judged.policies()),
        Cautions.of(judged.facts().care(), judged.plan().measures()),
        PageWords.all());
  }

  private static List<String> remarks(Checked.Judged judged) {
    List<String> remarks = new ArrayList<>();
    judged
        .points()
        .filter(points -> !points.taken().isEmpty())
        .ifPresent(
            points ->
                remarks.add(
                    "Points: "
                        + points.text()
                        + " ("
                        + points.where()
                        + "). Taken: "
                        + points.reasons()
                        + "."));
    judged
        .since()
        .filter(since -> !since.gone().isEmpty())
        .ifPresent(
            since ->
                remarks.add("Gone since the baseline: " + String.join(", ", since.gone()) + "."));
    return remarks;
  }

  static String cssClass(Verdict verdict) {
    return verdict.text().replace(' ', '-');
  }

  private static List<Figure> figures(Checked.Judged judged) {
    Timeline run = judged.facts().timeline();
    List<Figure> figures = new ArrayList<>();
    if (!run.tasks().isEmpty()) {
      Dates dates = judged.plan().hours().dates();
      figures.add(new Figure("Starts", run.start().text(), on(dates.of(run.start().day()))));
      String after = afterWork(run, judged.plan().measures());
      String on = on(dates.of(run.finish().day()));
      figures.add(
          new Figure(
              "Ends",
              run.finish().text(),
              on.isEmpty() || after.isEmpty() ? on + after : on + "; " + after));
      dates
          .latestStart(run.finish().day())
          .ifPresent(
              latest ->
                  figures.add(
                      new Figure(
                          "Begin by",
                          Dates.text(latest),
                          "to be done by " + Dates.text(dates.finishBy().orElseThrow()))));
      figures.add(new Figure("Work", run.handsOn().text()));
      figures.add(new Figure("Waiting", run.waiting().text()));
      figures.add(new Figure("Impressions", Integer.toString(run.impressions().size())));
      figures.add(new Figure("Sets", Integer.toString(sets(judged.plan(), run))));
    }
    judged.points().ifPresent(points -> figures.add(new Figure("Points", points.text())));
    figures.add(
        new Figure("Copies", Integer.toString(judged.facts().layout().placements().size())));
    return figures;
  }

  private static String on(Optional<LocalDate> date) {
    return date.map(Dates::text).orElse("");
  }

  /** What goes on by itself when everybody has gone; empty if nothing does. */
  private static String afterWork(Timeline run, Measures units) {
    Moment worked =
        run.tasks().stream().filter(Task::worked).map(Task::end).reduce(run.start(), Moment::later);
    return run.finish().compareTo(worked) <= 0
        ? ""
        : "work ends "
            + WorkWords.clock(worked, run.finish().day())
            + ", then "
            + run.tasks().stream()
                .filter(task -> task.end().equals(run.finish()))
                .findFirst()
                .map(
                    task ->
                        task.kind() == Task.Kind.DRY_SCREEN
                            ? "screens dry"
                            : DaySpeech.text(task.doing(), units))
                .orElse("it dries");
  }

  /** What is printed before the cloth moves on, counted through all steps. */
  private static int sets(PrintPlan plan, Timeline run) {
    Set<Integer> together = new HashSet<>();
    for (Step step : plan.run()) {
      if (step instanceof PrintStep print && print.order() == PrintOrder.SET_BY_SET) {
        together.add(step.number());
      }
    }
    Set<List<Object>> sets = new HashSet<>();
    for (Impression i : run.impressions()) {
      // Elsewhere the arrangements of a step number their sets apart.
      boolean shared = together.contains(i.step());
      String arrangement = shared ? "" : i.footprint().placement().arrangement();
      sets.add(List.of(i.step(), i.set(), arrangement));
    }
    return sets.size();
  }
}
