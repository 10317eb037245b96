package strikeoff.report.page;

import gg.jte.Content;
import java.util.List;

/**
 * What judged a batch, to be led to from its findings.
 *
 * @param words of the trade, each with what it means
 */
public record RulesPage(Head head, String sentence, List<Family> families, List<Cell> words) {

  public RulesPage {
    families = List.copyOf(families);
    words = List.copyOf(words);
  }

  /** Rules about one subject. */
  public record Family(String name, List<Rule> rules) {

    public Family {
      rules = List.copyOf(rules);
    }
  }

  /**
   * One rule.
   *
   * @param id also where links lead
   * @param severity the word
   * @param limits each with its value and why
   */
  public record Rule(
      String id,
      String severity,
      Content shape,
      String summary,
      String because,
      String source,
      List<Cell> limits) {

    public Rule {
      limits = List.copyOf(limits);
    }
  }
}
