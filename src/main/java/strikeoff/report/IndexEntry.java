package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.findings.Finding;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.timeline.Timeline;

/**
 * What an index keeps of one checked plan; small, so that a batch of a thousand needs no more than
 * this of each.
 *
 * @param link address of the plan's own page relative to the index; empty if there is none
 * @param findings how many of each rule, worst first
 * @param finishes when the run ends; empty if it has none
 * @param finishSeconds the same on the run's clock; -1 if it has none
 */
public record IndexEntry(
    String file,
    String title,
    String link,
    Verdict verdict,
    Map<RuleInfo, Integer> findings,
    String finishes,
    long finishSeconds) {

  public IndexEntry {
    findings = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(findings));
  }

  public static IndexEntry of(Checked checked, String link) {
    if (!(checked instanceof Checked.Judged judged)) {
      return new IndexEntry(
          checked.file(), checked.file(), link, checked.verdict(), Map.of(), "", -1);
    }
    Map<RuleInfo, Integer> findings = new LinkedHashMap<>();
    List<Finding> sorted = new ArrayList<>(judged.findings());
    sorted.forEach(f -> findings.merge(f.rule(), 1, Integer::sum));
    Timeline run = judged.facts().timeline();
    boolean runs = !run.tasks().isEmpty();
    return new IndexEntry(
        judged.file(),
        judged.plan().title(),
        link,
        judged.verdict(),
        findings,
        runs ? run.finish().text() : "",
        runs ? run.finish().seconds() : -1);
  }

  int count(Severity severity) {
    return findings.entrySet().stream()
        .filter(e -> e.getKey().severity() == severity)
        .mapToInt(Map.Entry::getValue)
        .sum();
  }
}
