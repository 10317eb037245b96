package strikeoff.report.page;

import gg.jte.Content;
import java.util.List;

/**
 * Two versions of a plan or of a batch, side by side.
 *
 * @param title what became what
 * @param overview a row for each plan; null for a single one
 */
public record ComparePage(
    Head head,
    String title,
    String sentence,
    List<Figure> figures,
    TableBlock overview,
    List<Plan> plans) {

  public ComparePage {
    figures = List.copyOf(figures);
    plans = List.copyOf(plans);
  }

  /**
   * One plan.
   *
   * @param id for links within the page
   * @param verdict a class for the style sheet
   * @param remark what the findings can't tell; may be empty
   * @param changes table of figures; null if none changed
   */
  public record Plan(
      String id,
      String name,
      String title,
      String verdict,
      String verdictWords,
      String remark,
      List<Group> groups,
      TableBlock changes) {

    public Plan {
      groups = List.copyOf(groups);
    }
  }

  /** Findings of one fate; never empty. */
  public record Group(String title, List<Item> items) {

    public Group {
      items = List.copyOf(items);
    }
  }

  /**
   * A finding, or a mistake of a file that can't be read.
   *
   * @param severity a class for the style sheet; empty for a mistake
   * @param shape its mark; null for a mistake
   * @param remedy what to do; empty where nothing is left to do
   */
  public record Item(
      String severity, Content shape, String rule, String place, String message, String remedy) {}
}
