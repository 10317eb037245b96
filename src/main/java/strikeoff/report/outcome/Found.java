package strikeoff.report.outcome;

import java.util.List;
import java.util.Optional;
import strikeoff.findings.Severity;

/**
 * A finding, without the facts behind it.
 *
 * @param rule its id
 * @param key the same for the same fault in another version of the plan, wherever its lines stand
 *     by then; no two findings of a plan have one key
 * @param marks names of the placements concerned
 * @param accepted the reason why the plan accepts it, if it does
 */
public record Found(
    String rule,
    Severity severity,
    String key,
    String message,
    String remedy,
    Spot place,
    List<Spot> related,
    List<String> marks,
    Optional<String> accepted) {

  public Found {
    related = List.copyOf(related);
    marks = List.copyOf(marks);
  }

  /** True if it keeps the plan from being printable. */
  public boolean blocks() {
    return severity == Severity.STOP && accepted.isEmpty();
  }
}
