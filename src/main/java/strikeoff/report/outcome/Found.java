package strikeoff.report.outcome;

import java.util.List;
import java.util.Optional;
import strikeoff.findings.Severity;
import strikeoff.findings.Since;

/**
 * A finding, without the facts behind it.
 *
 * @param rule its id
 * @param key the same for the same fault in another version of the plan, wherever its lines stand
 *     by then; no two findings of a plan have one key
 * @param fixes tried changes of the plan, least first: one of them mends it
 * @param marks names of the placements concerned
 * @param accepted the reason why the plan accepts it, if it does
 * @param since how it stands to an earlier run, if one was the baseline
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
    Optional<String> acceptLine,
    Optional<Since> since) {

  public Found {
    fixes = List.copyOf(fixes);
    related = List.copyOf(related);
    marks = List.copyOf(marks);
  }

  /** True if the baseline had it. */
  public boolean isOld() {
    return since.filter(Since::isOld).isPresent();
  }

  /** True if it keeps the plan from being printable. */
  public boolean blocks() {
    return severity == Severity.STOP && accepted.isEmpty();
  }
}
