package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import strikeoff.check.Verdict;
import strikeoff.findings.Severity;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;

/** Counts what came of a batch. */
public final class Tally {

  private final Map<Verdict, Integer> verdicts = new EnumMap<>(Verdict.class);
  private final Map<Severity, Integer> findings = new EnumMap<>(Severity.class);
  private final Set<Severity> open = EnumSet.noneOf(Severity.class);
  private final Set<Exit> exits = EnumSet.noneOf(Exit.class);
  private int accepted;
  private int plans;

  /**
   * What of a plan is counted.
   *
   * @param severities of its findings
   * @param open those of findings that it doesn't accept
   * @param accepted stops that it accepts
   * @param failed rules that failed on it
   * @param known true if all that keeps it from being printable was there in the baseline
   */
  public record Counted(
      Verdict verdict,
      List<Severity> severities,
      Set<Severity> open,
      int accepted,
      int failed,
      boolean known) {

    /** How a run ends that has this plan alone: what is old doesn't fail. */
    public Exit exit() {
      return failed > 0 ? Exit.FAULT : known ? Exit.PRINTABLE : Exit.of(verdict);
    }

    public static Counted of(Outcome plan) {
      return new Counted(
          plan.verdict(),
          plan.findings().stream().map(Found::severity).toList(),
          plan.findings().stream()
              .filter(f -> f.accepted().isEmpty() && !f.isOld())
              .map(Found::severity)
              .collect(Collectors.toSet()),
          (int)
              plan.findings().stream()
                  .filter(f -> f.severity() == Severity.STOP && !f.blocks())
                  .count(),
          plan.failedRules().size(),
          plan.verdict() == Verdict.NOT_PRINTABLE
              && plan.findings().stream().filter(Found::blocks).allMatch(Found::isOld));
    }
  }

  public void add(Outcome plan) {
    add(Counted.of(plan));
  }

  public void add(Counted plan) {
    plans++;
    verdicts.merge(plan.verdict(), 1, Integer::sum);
    exits.add(plan.exit());
    plan.severities().forEach(s -> findings.merge(s, 1, Integer::sum));
    open.addAll(plan.open());
    accepted += plan.accepted();
  }

  /**
   * The worst of the plans, where nothing fails that the baseline had; a failed rule counting as a
   * fault of the tool.
   */
  public Exit exit() {
    return Exit.worst(exits);
  }

  /** Severities of findings that no plan accepts, and no baseline had. */
  public Set<Severity> open() {
    return Set.copyOf(open);
  }

  /** Two lines at most: plans by verdict, findings by severity. */
  public List<String> lines() {
    List<String> byVerdict = new ArrayList<>();
    verdicts.forEach((verdict, count) -> byVerdict.add(count + " " + verdict.text()));
    List<String> lines = new ArrayList<>();
    String counted = counted(plans, "plan", "plans");
    lines.add(plans == 0 ? counted : counted + ": " + String.join(", ", byVerdict));
    if (!findings.isEmpty()) {
      List<String> parts = new ArrayList<>();
      int stops = findings.getOrDefault(Severity.STOP, 0);
      if (stops > accepted) {
        parts.add(counted(stops - accepted, "stop", "stops"));
      }
      if (accepted > 0) {
        parts.add(counted(accepted, "accepted stop", "accepted stops"));
      }
      add(parts, Severity.RISK, "risk", "risks");
      add(parts, Severity.ADVICE, "piece of advice", "pieces of advice");
      lines.add("found: " + String.join(", ", parts));
    }
    return lines;
  }

  private void add(List<String> parts, Severity severity, String one, String many) {
    Integer count = findings.get(severity);
    if (count != null) {
      parts.add(counted(count, one, many));
    }
  }

  private static String counted(int count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }
}
