package strikeoff.report.page;

import gg.jte.Content;
import java.util.List;

/**
 * A batch at a glance.
 *
 * @param rules what can be filtered by, and how many plans each rule trips
 * @param folders the folders with several plans, if there is more than one, each with its own rules
 */
public record IndexPage(
    Head head,
    String title,
    String sentence,
    List<Figure> figures,
    List<Row> rows,
    List<RuleRow> rules,
    List<Folder> folders) {

  public IndexPage {
    folders = List.copyOf(folders);
    figures = List.copyOf(figures);
    rows = List.copyOf(rows);
    rules = List.copyOf(rules);
  }

  /**
   * One plan.
   *
   * @param link address of its report, relative; empty if it has none
   * @param verdict a class for the style sheet
   * @param verdictOrder worst first, for sorting
   * @param finish for sorting, in minutes; -1 if it doesn't run
   * @param tripped ids of all its rules with findings, separated by blanks
   * @param severities severities it has findings of, separated by blanks
   * @param moreFindings how many are not among the worst
   * @param folder it lies in; may be empty
   * @param trouble why it couldn't be judged; empty if it was
   */
  public record Row(
      String file,
      String title,
      String link,
      String verdict,
      String verdictWords,
      int verdictOrder,
      int stops,
      int risks,
      int advice,
      String finishes,
      long finish,
      String tripped,
      String severities,
      List<Worst> worst,
      int moreFindings,
      String folder,
      String trouble) {

    public Row {
      worst = List.copyOf(worst);
    }
  }

  /** A finding named in a row. */
  public record Worst(String severity, Content shape, String rule, String summary) {}

  /** A folder's plans taken together: a class, a studio's season. */
  public record Folder(String name, int plans, List<RuleRow> rules) {

    public Folder {
      rules = List.copyOf(rules);
    }
  }

  /** How many plans a rule trips; the bar is a drawing of the share. */
  public record RuleRow(
      String rule,
      String severity,
      Content shape,
      String summary,
      int plans,
      int findings,
      String share,
      Content bar) {}
}
