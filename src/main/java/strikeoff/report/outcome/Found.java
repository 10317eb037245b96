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
 * @param fixes tried changes of the plan, least first: one of them mends it
 * @param marks names of the placements concerned
 * @param accepted the reason why the plan accepts it, if it does
 * @param acceptLine what to write into the plan's {@code accept} to accept it, if anything does
 */
public record Found(
    String rule,
    Severity severity,
    String key,
    String message,
    String remedy,
    List<Fix> fixes,
    Spot place,
    List<Spot> related,
    List<String> marks,
    Optional<String> accepted,
    Optional<String> acceptLine) {

  public Found {
    fixes = List.copyOf(fixes);
    related = List.copyOf(related);
    marks = List.copyOf(marks);
  }

  /** True if it keeps the plan from being printable. */
  public boolean blocks() {
    return severity == Severity.STOP && accepted.isEmpty();
  }
}
