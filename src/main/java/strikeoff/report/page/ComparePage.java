package strikeoff.report.page;

import gg.jte.Content;
import java.util.List;

/**
 * Two versions of a plan or of a batch, side by side.
 *
 * @param title what became what, each by as much of its name as tells them apart
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
   * @param before the old version's own page, relative; empty if there is none
   * @param after the new version's, likewise
   * @param verdict a class for the style sheet
   * @param remark what the findings can't tell; may be empty
   * @param changes table of figures; null if none changed
   */
  public record Plan(
      String id,
      String name,
      String title,
      String before,
      String after,
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
   * @param severity its word; empty for a mistake
   * @param look a class for the style sheet
   * @param shape its mark; null for a mistake
   * @param summary what its rule finds, in a few words; empty for a mistake
   * @param remedy what to do; empty where nothing is left to do
   */
  public record Item(
      String severity,
      String look,
      Content shape,
      String rule,
      String summary,
      String place,
      String message,
      String remedy) {}
}
