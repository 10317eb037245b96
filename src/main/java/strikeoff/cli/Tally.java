package strikeoff.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;

/** Counts what came of a batch. */
final class Tally {

  private final Map<Verdict, Integer> verdicts = new EnumMap<>(Verdict.class);
  private final Map<Severity, Integer> findings = new EnumMap<>(Severity.class);
  private int faults;
  private int plans;

  void add(Checked checked) {
    List<Severity> severities = List.of();
    int failed = 0;
    if (checked instanceof Checked.Judged judged) {
      severities = judged.findings().stream().map(Finding::severity).toList();
      failed = judged.faults().size();
    }
    add(checked.verdict(), severities, failed);
  }

  void add(Outcome plan) {
    add(
        plan.verdict(),
        plan.findings().stream().map(Found::severity).toList(),
        plan.faults().size());
  }

  private void add(Verdict verdict, List<Severity> severities, int failed) {
    plans++;
    verdicts.merge(verdict, 1, Integer::sum);
    severities.forEach(s -> findings.merge(s, 1, Integer::sum));
    faults += failed;
  }

  /** The worst of the plans, a failed rule counting as a fault of the tool. */
  Exit exit() {
    List<Exit> exits = new ArrayList<>();
    verdicts.keySet().forEach(v -> exits.add(Exit.of(v)));
    if (faults > 0) {
      exits.add(Exit.FAULT);
    }
    return Exit.worst(exits);
  }

  /** Two lines at most: plans by verdict, findings by severity. */
  List<String> lines() {
    List<String> byVerdict = new ArrayList<>();
    verdicts.forEach((verdict, count) -> byVerdict.add(count + " " + verdict.text()));
    List<String> lines = new ArrayList<>();
    lines.add(counted(plans, "plan", "plans") + ": " + String.join(", ", byVerdict));
    if (!findings.isEmpty()) {
      List<String> parts = new ArrayList<>();
      add(parts, Severity.STOP, "stop", "stops");
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
