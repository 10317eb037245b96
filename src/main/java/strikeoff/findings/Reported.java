package strikeoff.findings;

import java.util.List;
import strikeoff.plan.Evidence;

/**
 * What a rule found, in words, before it has its place in a file.
 *
 * @param judged the fact it judged
 * @param evidence all facts it rests on, {@code judged} first
 */
public record Reported(
    RuleInfo rule, String message, String remedy, Evidence judged, List<Evidence> evidence) {

  public Reported {
    evidence = List.copyOf(evidence);
  }
}
