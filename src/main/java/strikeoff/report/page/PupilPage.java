package strikeoff.report.page;

import gg.jte.Content;
import java.util.List;

/**
 * One pupil's plans, to print and hand back.
 *
 * @param name whose they are
 * @param sentence how many of them are printable
 * @param points what they get together; empty without marks
 */
public record PupilPage(Head head, String name, String sentence, String points, List<Plan> plans) {

  public PupilPage {
    plans = List.copyOf(plans);
  }

  /**
   * One plan; it begins a page of paper.
   *
   * @param id for links within the page
   * @param link the plan's own page beside this one; empty if there is none
   * @param verdict a class for the style sheet
   * @param points what it gets; empty without marks
   * @param taken why not all of them, a line for each rule
   * @param findings worst first, and how many are left out
   * @param accepted findings that the plan accepts
   * @param right what was found right
   * @param remark what keeps that from being told; may be empty
   */
  public record Plan(
      String id,
      String title,
      String file,
      String link,
      String verdict,
      String sentence,
      String points,
      List<String> taken,
      Listed<Item> findings,
      Listed<Item> accepted,
      List<String> right,
      String remark) {

    public Plan {
      taken = List.copyOf(taken);
      right = List.copyOf(right);
    }
  }

  /**
   * A finding, or a mistake of a file that can't be read.
   *
   * @param severity a class for the style sheet; empty for a mistake
   * @param shape its mark; null for a mistake
   * @param summary the fault in a few words; of a mistake, where it stands
   * @param remedy what to do; empty for a mistake
   * @param because why the plan accepts it; empty if it doesn't
   * @param lines of the plan, as they stand there
   */
  public record Item(
      String severity,
      Content shape,
      String summary,
      String message,
      String remedy,
      String because,
      List<Quote> lines) {

    public Item {
      lines = List.copyOf(lines);
    }
  }
}
