package strikeoff.check;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.document.GivenUp;
import strikeoff.document.Problem;
import strikeoff.document.ShortOfMemory;
import strikeoff.document.SourceMap;
import strikeoff.facts.Facts;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Finding;
import strikeoff.findings.Narrowed;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.PolicyChange;
import strikeoff.findings.Severity;
import strikeoff.findings.SinceBaseline;
import strikeoff.plan.PrintPlan;

/**
 * What came of one plan. Texts from the plan in it are untrusted: escape them where they are shown.
 */
public sealed interface Checked {

  /** The plan's file as the user named it. */
  String file();

  Verdict verdict();

  /** The verdict in one sentence, with the figures. */
  String sentence();

  /**
   * A plan that was read, derived and judged.
   *
   * @param findings in {@link Finding#ORDER}
   * @param failedRules rules that failed on this plan; as long as there are any, it can't be called
   *     printable
   * @param policies names of the policy files that applied, from the top down
   * @param changes what they made of the findings
   * @param narrowed which rules were left out, if not all were asked
   * @param points what it gets by a studio's marks; empty without any, where a rule failed, and
   *     where some were left out
   * @param since what became of an earlier run's findings, if one is the baseline
   */
  record Judged(
      String file,
      PrintPlan plan,
      SourceMap source,
      Facts facts,
      List<Finding> findings,
      List<FailedRule> failedRules,
      List<String> policies,
      List<PolicyChange> changes,
      Optional<Narrowed> narrowed,
      Optional<SinceBaseline> since,
      Optional<PointsGiven> points)
      implements Checked {

    /** A plan that was judged by all rules. */
    public Judged(
        String file,
        PrintPlan plan,
        SourceMap source,
        Facts facts,
        List<Finding> findings,
        List<FailedRule> failedRules,
        List<String> policies,
        List<PolicyChange> changes) {
      this(
          file,
          plan,
          source,
          facts,
          findings,
          failedRules,
          policies,
          changes,
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }

    /** A plan that no policy file applied to. */
    public Judged(
        String file,
        PrintPlan plan,
        SourceMap source,
        Facts facts,
        List<Finding> findings,
        List<FailedRule> failedRules) {
      this(file, plan, source, facts, findings, failedRules, List.of(), List.of());
    }

    public Judged {
      policies = List.copyOf(policies);
      changes = List.copyOf(changes);
      findings = findings.stream().sorted(Finding.ORDER).toList();
      failedRules = List.copyOf(failedRules);
    }

    /** The same with findings that say more. */
    public Judged with(List<Finding> findings) {
      return but(findings, failedRules, changes, narrowed, since, points);
    }

    /** The same with what it gets. */
    public Judged marked(Optional<PointsGiven> marks) {
      return but(findings, failedRules, changes, narrowed, since, marks);
    }

    /** The same, held against an earlier run. */
    public Judged since(SinceBaseline baseline) {
      return but(findings, failedRules, changes, narrowed, Optional.of(baseline), points);
    }

    /** The same as some rules alone would judge it. */
    public Judged by(Narrowed rules) {
      return but(
          findings.stream().filter(f -> rules.asks(f.rule().id())).toList(),
          failedRules.stream().filter(f -> rules.asks(f.rule())).toList(),
          changes.stream().filter(c -> rules.asks(c.what())).toList(),
          Optional.of(rules),
          since,
          Optional.empty());
    }

    private Judged but(
        List<Finding> findings,
        List<FailedRule> failedRules,
        List<PolicyChange> changes,
        Optional<Narrowed> narrowed,
        Optional<SinceBaseline> since,
        Optional<PointsGiven> points) {
      return new Judged(
          file,
          plan,
          source,
          facts,
          findings,
          failedRules,
          policies,
          changes,
          narrowed,
          since,
          points);
    }

    @Override
    public Verdict verdict() {
      if (findings.stream().anyMatch(Finding::blocks)) {
        return Verdict.NOT_PRINTABLE;
      }
      return failedRules.isEmpty() ? Verdict.PRINTABLE : Verdict.NOT_CHECKED;
    }

    @Override
    public String sentence() {
      return VerdictSentence.of(this);
    }

    /** How many stops the plan accepts. */
    public int acceptedStops() {
      return (int) of(Severity.STOP).filter(f -> !f.blocks()).count();
    }

    /** How many findings would be stops if a policy didn't count them as less or leave them out. */
    public int passed() {
      return PolicyChange.passed(changes);
    }

    /** The findings of one severity, accepted ones included. */
    public Stream<Finding> of(Severity severity) {
      return findings.stream().filter(f -> f.severity() == severity);
    }
  }

  /**
   * A file that isn't a readable plan.
   *
   * @param lines the file's text as far as it could be read, line by line, for quoting
   * @param problems every mistake found, down the file; at least one
   * @param by who made it, as it says; may be empty
   */
  record Unreadable(String file, List<String> lines, List<Problem> problems, String by)
      implements Checked {

    public Unreadable {
      lines = List.copyOf(lines);
      problems = problems.stream().sorted(Problem.ORDER).toList();
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("nothing is wrong with " + file);
      }
    }

    @Override
    public Verdict verdict() {
      return Verdict.UNREADABLE;
    }

    @Override
    public String sentence() {
      Problem first = problems.get(0);
      return problems.size() == 1
          ? "Unreadable: a mistake at line " + first.position().line() + "."
          : "Unreadable: "
              + problems.size()
              + " mistakes, the first one at line "
              + first.position().line()
              + ".";
    }
  }

  /**
   * A plan that the tool failed on.
   *
   * @param what what went wrong, in one line
   * @param trace where in the program, for its makers; may be empty
   */
  record Failed(String file, String what, String trace) implements Checked {

    /** What an exception says that nobody expected. */
    public static Failed of(String file, Throwable thrown) {
      StringWriter trace = new StringWriter();
      thrown.printStackTrace(new PrintWriter(trace));
      String what =
          ShortOfMemory.caused(thrown)
              ? "it needs more memory than there is"
              : thrown instanceof GivenUp
                  ? "it was given up"
                  : "a fault of the tool: " + thrown.toString().lines().findFirst().orElse("");
      return new Failed(file, what, trace.toString());
    }

    @Override
    public Verdict verdict() {
      return Verdict.NOT_CHECKED;
    }

    @Override
    public String sentence() {
      return "Not checked: " + what + (what.matches(".*[.?!]") ? "" : ".");
    }
  }
}
