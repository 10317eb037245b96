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
import strikeoff.plan.Problem;
import strikeoff.report.drawing.Words;
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
 * @param trouble why it couldn't be judged: the first mistake and its line; empty if it was
 */
public record IndexEntry(
    String file,
    String title,
    String link,
    Verdict verdict,
    Map<RuleInfo, Integer> findings,
    String finishes,
    long finishSeconds,
    String trouble) {

  private static final int LONGEST_TROUBLE = 200;

  public IndexEntry {
    findings = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(findings));
  }

  public static IndexEntry of(Checked checked, String link) {
    if (!(checked instanceof Checked.Judged judged)) {
      return new IndexEntry(
          checked.file(),
          checked.file(),
          link,
          checked.verdict(),
          Map.of(),
          "",
          -1,
          trouble(checked));
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
        runs ? run.finish().seconds() : -1,
        "");
  }

  private static String trouble(Checked checked) {
    if (!(checked instanceof Checked.Unreadable unreadable) || unreadable.problems().isEmpty()) {
      return checked.sentence();
    }
    Problem first = unreadable.problems().get(0);
    return trouble(first.position().line(), first.message(), unreadable.problems().size() - 1);
  }

  private static String trouble(int line, String message, int more) {
    return "Line "
        + line
        + ": "
        + Words.shortened(message, LONGEST_TROUBLE)
        + (more == 0 ? "" : " (and " + more + " more)");
  }

  /** The folder it lies in, as its file's name has it; empty if none. */
  String folder() {
    return file.contains("/") ? file.substring(0, file.lastIndexOf('/')) : "";
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
        finish.map(Moment::seconds).orElse(-1L),
        plan.figures().isPresent()
            ? ""
            : plan.mistakes().isEmpty()
                ? plan.sentence()
                : trouble(
                    plan.mistakes().get(0).region().start().line(),
                    plan.mistakes().get(0).message(),
                    plan.mistakes().size() - 1));
  }

  int count(Severity severity) {
    return findings.entrySet().stream()
        .filter(e -> e.getKey().severity() == severity)
        .mapToInt(Map.Entry::getValue)
        .sum();
  }
}
