package strikeoff.report.page;

import java.util.List;

/**
 * Findings under one heading, in the order to work through them.
 *
 * @param listed of which some may be left out
 * @param remark what the heading means
 */
public record FindingGroup(String heading, String remark, Listed<FindingCard> listed) {

  /** As many of the findings as a page shows. */
  public FindingGroup(String heading, String remark, List<FindingCard> cards) {
    this(heading, remark, Listed.of(cards, Listed.ROWS));
  }

  public List<FindingCard> cards() {
    return listed.shown();
  }

  /** The remark, and how many findings are left out. */
  public String explanation() {
    return listed.note(remark, "findings");
  }

  FindingGroup cut(int times) {
    return new FindingGroup(heading, remark, listed.cut(times));
  }
}
