package strikeoff.report.page;

import java.util.List;

/** Findings under one heading, in the order to work through them. */
public record FindingGroup(String heading, String explanation, List<FindingCard> cards) {

  public FindingGroup {
    cards = List.copyOf(cards);
  }
}
