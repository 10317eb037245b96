package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.day.Moment;
import strikeoff.day.facts.Timeline;
import strikeoff.document.Problem;
import strikeoff.findings.Finding;
import strikeoff.findings.Narrowed;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.PolicyChange;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.findings.SinceBaseline;
import strikeoff.report.drawing.FittedWords;
import strikeoff.report.outcome.Figures;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;

/**
 * What an index keeps of one checked plan; small, so that a batch of a thousand needs no more than
 * this of each.
 *
 * @param link address of the plan's own page relative to the index; empty if there is none
 * @param findings how many of each rule, worst first
 * @param finishes when the run ends; empty if it has none
 * @param finishSeconds the same on the run's clock; -1 if it has none
 * @param accepted what its plan accepts, by rule and reason
 * @param passed findings that only a policy keeps from being stops
 * @param narrowed which rules were left out, if not all were asked
 * @param since what became of an earlier run's findings, if one is the baseline
 * @param by who made the plan, as it says; empty if it doesn't
 * @param points what it gets by a studio's marks, if there are any
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
    List<Accepted> accepted,
    int passed,
    Optional<Narrowed> narrowed,
    Optional<SinceBaseline> since,
    String by,
    Optional<PointsGiven> points,
    String trouble) {

  private static final int LONGEST_TROUBLE = 200;

  /** Findings of a rule that the plan accepts for one reason. */
  public record Accepted(RuleInfo rule, String because, int findings) {}

  public IndexEntry {
    accepted = List.copyOf(accepted);
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
          List.of(),
          0,
          Optional.empty(),
          Optional.empty(),
          "",
          Optional.empty(),
          trouble(checked));
    }
    Map<RuleInfo, Integer> findings = new LinkedHashMap<>();
    List<Finding> sorted = new ArrayList<>(judged.findings());
    AcceptedCounts accepted = new AcceptedCounts();
    for (Finding f : sorted) {
      findings.merge(f.rule(), 1, Integer::sum);
      f.accepted().ifPresent(a -> accepted.add(f.rule(), a.because()));
    }
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
        accepted.list(),
        judged.passed(),
        judged.narrowed(),
        judged.since(),
        judged.plan().by(),
        judged.points(),
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
        + FittedWords.shortened(message, LONGEST_TROUBLE)
        + (more == 0 ? "" : " (and " + more + " more)");
  }

  /** Whose it is: who made it, or else the folder it lies in. */
  String pupil() {
    return Outcome.pupil(by, file);
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
  public static IndexEntry of(
      Outcome plan, Map<String, RuleInfo> rules, Optional<Narrowed> narrowed, boolean baseline) {
    Map<RuleInfo, Integer> findings = new LinkedHashMap<>();
    AcceptedCounts accepted = new AcceptedCounts();
    for (Found found : plan.findings()) {
      RuleInfo known = rules.get(found.rule());
      if (known != null) {
        // Folders may count one rule differently.
        RuleInfo rule = known.counted(found.severity());
        findings.merge(rule, 1, Integer::sum);
        found.accepted().ifPresent(because -> accepted.add(rule, because));
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
        accepted.list(),
        PolicyChange.passed(plan.changes()),
        narrowed.filter(n -> plan.figures().isPresent()),
        baseline && plan.figures().isPresent() ? Optional.of(since(plan)) : Optional.empty(),
        plan.by(),
        plan.points(),
        plan.figures().isPresent()
            ? ""
            : plan.mistakes().isEmpty()
                ? plan.sentence()
                : trouble(
                    plan.mistakes().get(0).region().start().line(),
                    plan.mistakes().get(0).message(),
                    plan.mistakes().size() - 1));
  }

  private static SinceBaseline since(Outcome plan) {
    int old = (int) plan.findings().stream().filter(Found::isOld).count();
    return new SinceBaseline(
        plan.findings().size() - old, old, plan.gone().stream().map(Found::rule).toList());
  }

  /** True if there are findings to count. */
  boolean judged() {
    return verdict == Verdict.PRINTABLE || verdict == Verdict.NOT_PRINTABLE || !findings.isEmpty();
  }

  /** Findings of a severity that the plan doesn't accept. */
  int count(Severity severity) {
    int all =
        findings.entrySet().stream()
            .filter(e -> e.getKey().severity() == severity)
            .mapToInt(Map.Entry::getValue)
            .sum();
    return all - accepted(severity);
  }

  /** Findings of a severity that the plan accepts. */
  int accepted(Severity severity) {
    return accepted.stream()
        .filter(a -> a.rule().severity() == severity)
        .mapToInt(Accepted::findings)
        .sum();
  }

  /** Rules with findings that the plan doesn't accept, worst first. */
  List<RuleInfo> open() {
    return findings.entrySet().stream()
        .filter(
            e ->
                e.getValue()
                    > accepted.stream()
                        .filter(a -> a.rule().equals(e.getKey()))
                        .mapToInt(Accepted::findings)
                        .sum())
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Counts by rule and reason, in the order they come. */
  private static final class AcceptedCounts {

    private final Map<RuleInfo, Map<String, Integer>> counts = new LinkedHashMap<>();

    void add(RuleInfo rule, String because) {
      String reason = FittedWords.shortened(because, LONGEST_TROUBLE);
      counts.computeIfAbsent(rule, r -> new LinkedHashMap<>()).merge(reason, 1, Integer::sum);
    }

    List<Accepted> list() {
      List<Accepted> all = new ArrayList<>();
      counts.forEach(
          (rule, reasons) ->
              reasons.forEach((because, count) -> all.add(new Accepted(rule, because, count))));
      return all;
    }
  }
}
