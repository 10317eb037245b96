package strikeoff.findings;

import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import strikeoff.policy.Limit;
import strikeoff.units.Chance;

/**
 * What a rule says of itself.
 *
 * @param id {@code family/fault}
 * @param severity what its findings count as; the worst of them if it has grades
 * @param grades what they count as by their chance, worst first; empty if all are alike
 * @param summary the fault in a few words
 * @param because why it matters, one or two sentences
 * @param message template of what was found, with {@code {names}} of the evidence's values
 * @param remedy template of what to do, likewise
 * @param mend template of the edits that mend it, as {@link Edits} reads it; empty if none do
 * @param harms what is harmed by what it finds, which no edit that mends something else may bring:
 *     the cloth, a paste, a screen; empty if nothing is
 * @param doubts families of rules whose findings rest on the figure that it doubts: none of them is
 *     mended before that figure is settled
 * @param atWork true if its remedy is told where its step is done, whatever it counts as: what
 *     hands do there, not the plan
 * @param source published source, {@code common practice, no source} or {@code from memory}
 * @param limits names of the policy limits its condition reads
 */
public record RuleInfo(
    String id,
    Severity severity,
    List<Grade> grades,
    String summary,
    String because,
    String message,
    String remedy,
    String mend,
    String harms,
    List<String> doubts,
    boolean atWork,
    String source,
    List<String> limits) {

  /** A rule whose findings all count alike, and which no edit mends. */
  public RuleInfo(
      String id,
      Severity severity,
      String summary,
      String because,
      String message,
      String remedy,
      String source,
      List<String> limits) {
    this(
        id, severity, List.of(), summary, because, message, remedy, "", "", List.of(), false,
        source, limits);
  }

  public RuleInfo {
    grades = List.copyOf(grades);
    doubts = List.copyOf(doubts);
    // No copy: the rulebook reads them when they are looked at.
    limits = Collections.unmodifiableList(limits);
  }

  /** All that its findings may count as, worst first. */
  public List<Severity> severities() {
    return grades.isEmpty() ? List.of(severity) : grades.stream().map(Grade::severity).toList();
  }

  /** The rule as it counts for a finding of that chance. */
  public RuleInfo at(Chance chance, Function<String, Limit> limits) {
    return grades.stream()
        .filter(grade -> grade.holds(chance.share(), limits))
        .findFirst()
        .map(grade -> counted(grade.severity()))
        .orElse(this);
  }

  /** By its id alone, which no other rule has. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** The same rule where all its findings count as something else. */
  public RuleInfo counted(Severity severity) {
    return severity == this.severity && grades.isEmpty()
        ? this
        : new RuleInfo(
            id, severity, List.of(), summary, because, message, remedy, mend, harms, doubts, atWork,
            source, limits);
  }

  /** True if its findings rest on a figure that another rule doubts. */
  public boolean restsOn(RuleInfo other) {
    return other.doubts.contains(family());
  }

  /** The part of the id before the slash. */
  public String family() {
    return id.substring(0, id.indexOf('/'));
  }
}
