package strikeoff.findings;

import strikeoff.document.PlanPath;
import strikeoff.document.Scalars;

/**
 * Writes the entry of a plan's {@code accept} that accepts a finding, to be copied as it stands.
 */
final class AcceptLine {

  /** What plain YAML can't hold inside braces, or not everywhere in them. */
  private static final String MARKS = ",[]{}:#\"'`&*!|>%@\\";

  private AcceptLine() {}

  /**
   * @param place a place that stands in the plan; the root for all findings of the rule
   */
  static String of(String rule, PlanPath place) {
    String at = place.spoken();
    return "- {rule: "
        + rule
        + (at.isEmpty() ? "" : ", at: " + (isPlain(at) ? at : Scalars.quoted(at)))
        + ", because: your reason}";
  }

  private static boolean isPlain(String text) {
    return text.chars().noneMatch(c -> MARKS.indexOf(c) >= 0 || c < ' ')
        && !text.startsWith("-")
        && !text.startsWith("?")
        && !text.contains("  ")
        && text.equals(text.strip());
  }
}
