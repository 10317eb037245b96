package strikeoff.findings;

import java.util.Collections;
import java.util.List;

/**
 * What a rule says of itself.
 *
 * @param id {@code family/fault}
 * @param severity what its findings count as
 * @param summary the fault in a few words
 * @param because why it matters, one or two sentences
 * @param message template of what was found, with {@code {names}} of the evidence's values
 * @param remedy template of what to do, likewise
 * @param source published source, {@code common practice, no source} or {@code from memory}
 * @param limits names of the policy limits its condition reads
 */
public record RuleInfo(
    String id,
    Severity severity,
    String summary,
    String because,
    String message,
    String remedy,
    String source,
    List<String> limits) {

  public RuleInfo {
    // No copy: the rulebook reads them when they are looked at.
    limits = Collections.unmodifiableList(limits);
  }

  /** By its id alone, which no other rule has. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** The part of the id before the slash. */
  public String family() {
    return id.substring(0, id.indexOf('/'));
  }
}
