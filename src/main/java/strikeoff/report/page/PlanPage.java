package strikeoff.report.page;

import java.util.List;
import strikeoff.report.drawing.ClothDrawing;
import strikeoff.report.drawing.RunChart;

/**
 * All of a plan's report.
 *
 * @param verdict a class for the style sheet: printable, not-printable, not-checked
 * @param accepted what the plan accepts, stops first
 * @param acceptedStops how many of those are stops
 * @param narrowed that only some rules judged; empty if all did
 * @param remarks what the findings come to: points, and what is gone since the baseline
 * @param policy what a studio's policy made of the findings, in sentences
 * @param failedRules rules that failed on this plan
 * @param legend the pastes with their colours
 * @param signs how the colours' signs in the drawing are to be read
 * @param films a sheet for each design that has films
 * @param stages states of the cloth in the order of the run
 * @param materials what to buy and to weigh
 * @param tables pastes, baths, screens and colours
 * @param cautions what to wear and mind
 * @param words of the trade, each with what it means
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
    Listed<FindingCard> accepted,
    int acceptedStops,
    String narrowed,
    List<String> remarks,
    List<String> policy,
    List<String> failedRules,
    Listed<Cell> legend,
    ClothDrawing cloth,
    String signs,
    Listed<FilmSheet> films,
    Listed<Stage> stages,
    Listed<RunChart> run,
    Listed<DaySheet> sheets,
    MaterialsList materials,
    List<TableSection> tables,
    TableBlock assumptions,
    List<CautionBlock> cautions,
    List<Cell> words) {

  public PlanPage {
    figures = List.copyOf(figures);
    findings = List.copyOf(findings);
    remarks = List.copyOf(remarks);
    policy = List.copyOf(policy);
    failedRules = List.copyOf(failedRules);
    tables = List.copyOf(tables);
    cautions = List.copyOf(cautions);
    words = List.copyOf(words);
  }

  /** The same with lists that are so many times shorter, and tell how much they leave out. */
  public PlanPage cut(int times) {
    return new PlanPage(
        head,
        title,
        file,
        verdict,
        sentence,
        figures,
        notes,
        findings.stream().map(group -> group.cut(times)).toList(),
        accepted.cut(times),
        acceptedStops,
        narrowed,
        remarks,
        policy,
        failedRules,
        legend.cut(times),
        cloth,
        signs,
        new Listed<>(films.shown().stream().map(f -> f.cut(times)).toList(), films.more())
            .cut(times),
        stages.cut(times),
        run.cut(times),
        sheets.cut(times),
        materials.cut(times),
        tables.stream().map(section -> section.cut(times)).toList(),
        assumptions.cut(times),
        cautions,
        words);
  }
}
