package strikeoff.report.page;

import gg.jte.Content;
import java.util.List;

/**
 * One finding as a job to do.
 *
 * @param number as the cloth drawing shows it
 * @param severity the word: stop, risk, advice
 * @param shape the severity's shape
 * @param placements where on the cloth, in words; may be empty
 * @param own the line to edit
 * @param accepted the plan's reason for accepting it; empty if it isn't accepted
 * @param since that it is new or old since the baseline; empty without one
 * @param mends changes of the plan that mend it
 * @param acceptLine what to write into the plan to accept it; empty if nothing does
 */
public record FindingCard(
    int number,
    String severity,
    Content shape,
    String summary,
    String message,
    String remedy,
    String because,
    String source,
    String rule,
    String placements,
    Quote own,
    List<Quote> related,
    String accepted,
    String since,
    List<MendLines> mends,
    String acceptLine) {

  public FindingCard {
    related = List.copyOf(related);
    mends = List.copyOf(mends);
  }
}
