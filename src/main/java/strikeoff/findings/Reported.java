package strikeoff.findings;

import java.util.List;
import strikeoff.document.Edit;
import strikeoff.evidence.Evidence;

/**
 * What a rule found, in words, before it has its place in a file.
 *
 * @param judged the fact it judged
 * @param edits changes of the plan that may mend it, untried: one of them, each made of several
 * @param evidence all facts it rests on, {@code judged} first
 */
public record Reported(
    RuleInfo rule,
    String message,
    String remedy,
    List<List<Edit>> edits,
    Evidence judged,
    List<Evidence> evidence) {

  /** What no edit mends. */
  public Reported(
      RuleInfo rule, String message, String remedy, Evidence judged, List<Evidence> evidence) {
    this(rule, message, remedy, List.of(), judged, evidence);
  }

  public Reported {
    edits = List.copyOf(edits);
    evidence = List.copyOf(evidence);
  }
}
