package strikeoff.report.page;

import java.util.List;
import strikeoff.report.drawing.ClothDrawing;
import strikeoff.report.drawing.RunChart;

/**
 * All of a plan's report.
 *
 * @param verdict a class for the style sheet: printable, not-printable, not-checked
 * @param faults rules that failed on this plan
 * @param legend the pastes with their colours
 * @param stages states of the cloth in the order of the run
 * @param tables pastes, mixing, baths, screens and colours
 * @param cautions what to wear and mind
 */
public record PlanPage(
    Head head,
    String title,
    String file,
    String verdict,
    String sentence,
    List<Figure> figures,
    String notes,
    List<FindingGroup> findings,
    List<FindingCard> accepted,
    List<String> faults,
    List<Cell> legend,
    ClothDrawing cloth,
    List<Stage> stages,
    List<RunChart> run,
    List<DaySheet> sheets,
    List<TableSection> tables,
    Table assumptions,
    List<Caution> cautions) {

  public PlanPage {
    figures = List.copyOf(figures);
    findings = List.copyOf(findings);
    accepted = List.copyOf(accepted);
    faults = List.copyOf(faults);
    legend = List.copyOf(legend);
    stages = List.copyOf(stages);
    run = List.copyOf(run);
    sheets = List.copyOf(sheets);
    tables = List.copyOf(tables);
    cautions = List.copyOf(cautions);
  }
}
