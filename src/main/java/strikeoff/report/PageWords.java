package strikeoff.report;

import java.util.List;
import strikeoff.policy.Glossary;
import strikeoff.report.page.Cell;

/** The words of the glossary that every report uses, with their meanings. */
final class PageWords {

  private static final List<String> USED =
      List.of(
          "frame-safe",
          "lift-safe",
          "fix-safe",
          "impression",
          "placement",
          "lay",
          "set",
          "station",
          "step",
          "separation",
          "key",
          "trap",
          "pull",
          "mesh",
          "deposit",
          "strike-off",
          "liquor ratio",
          "selvedge",
          "L*",
          "CIEDE2000",
          "w/v");

  private PageWords() {}

  static List<Cell> all() {
    return USED.stream().map(word -> Cell.of(word, Glossary.all().get(word))).toList();
  }
}
