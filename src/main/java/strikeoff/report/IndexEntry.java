package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.findings.Finding;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.report.outcome.Figures;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;
import strikeoff.timeline.Moment;
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

  /**
   * The same from what is kept of a checked plan.
   *
   * @param rules by id; a finding of another rule is left out
   */
  public static IndexEntry of(Outcome plan, Map<String, RuleInfo> rules) {
    Map<RuleInfo, Integer> findings = new LinkedHashMap<>();
    for (Found found : plan.findings()) {
      RuleInfo rule = rules.get(found.rule());
      if (rule != null) {
        findings.merge(rule, 1, Integer::sum);
      }
    }
    Optional<Moment> finish = plan.figures().flatMap(Figures::finish);
    return new IndexEntry(
        plan.file(),
        plan.title(),
        plan.report().orElse(""),
        plan.verdict(),
        findings,
        finish.map(Moment::text).orElse(""),
        finish.map(Moment::seconds).orElse(-1L));
  }

  int count(Severity severity) {
    return findings.entrySet().stream()
        .filter(e -> e.getKey().severity() == severity)
        .mapToInt(Map.Entry::getValue)
        .sum();
  }
}
