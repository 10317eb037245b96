package strikeoff.report.outcome;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.Problem;
import strikeoff.document.SourceMap;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Finding;
import strikeoff.findings.Mend;
import strikeoff.findings.Place;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.PolicyChange;

/**
 * What came of one plan, small enough to keep a whole batch of it. Texts in it are untrusted.
 *
 * @param number its place in the whole batch, from 1
 * @param file as the user named it
 * @param title the plan's own; the file's name if it could not be read
 * @param report the plan's page beside the batch's index, if one was written
 * @param sentence the verdict with its figures
 * @param findings worst first; empty if it could not be read
 * @param mistakes why it could not be read, down the file; else empty
 * @param failedRules rules that failed on it
 * @param failure what went wrong with the tool, if it failed on this plan
 * @param figures empty if the plan was not judged
 * @param policies names of the policy files that applied, from the top down
 * @param changes what they made of its findings
 * @param gone findings that the baseline had and the plan has no more
 * @param by who made the plan, as it says; empty if it doesn't
 * @param points what it gets by a studio's marks, if there are any
 */
public record Outcome(
    int number,
    String file,
    String title,
    Optional<String> report,
    Verdict verdict,
    String sentence,
    List<Found> findings,
    List<Mistake> mistakes,
    List<FailedRule> failedRules,
    Optional<String> failure,
    Optional<Figures> figures,
    List<String> policies,
    List<PolicyChange> changes,
    List<Found> gone,
    String by,
    Optional<PointsGiven> points) {

  /** A plan may be one line of a megabyte, with hundreds of mistakes. */
  private static final int LONGEST_LINE = 1_000;

  public Outcome {
    policies = List.copyOf(policies);
    changes = List.copyOf(changes);
    gone = List.copyOf(gone);
    findings = List.copyOf(findings);
    mistakes = List.copyOf(mistakes);
    failedRules = List.copyOf(failedRules);
  }

  /**
   * Keeps what matters of a checked plan.
   *
   * @param number its place in the batch, from 1
   */
  public static Outcome of(Checked checked, int number, Optional<String> report) {
    String title = checked.file();
    List<Found> findings = new ArrayList<>();
    List<Mistake> mistakes = new ArrayList<>();
    List<FailedRule> failedRules = List.of();
    Optional<String> failure = Optional.empty();
    Optional<Figures> figures = Optional.empty();
    List<String> policies = List.of();
    List<PolicyChange> changes = List.of();
    String by = "";
    Optional<PointsGiven> points = Optional.empty();
    if (checked instanceof Checked.Judged judged) {
      title = judged.plan().title();
      Keys keys = new Keys(judged.plan());
      judged.findings().forEach(f -> findings.add(found(f, keys, judged.source())));
      failedRules = judged.failedRules();
      policies = judged.policies();
      changes = judged.changes();
      by = judged.plan().by();
      points = judged.points();
      figures = Optional.of(Figures.of(judged));
    } else if (checked instanceof Checked.Unreadable unreadable) {
      unreadable.problems().forEach(p -> mistakes.add(mistake(p, unreadable.lines())));
      by = unreadable.by();
    } else if (checked instanceof Checked.Failed failed) {
      failure = Optional.of(failed.what());
    }
    return new Outcome(
        number,
        checked.file(),
        title,
        report,
        checked.verdict(),
        checked.sentence(),
        findings,
        mistakes,
        failedRules,
        failure,
        figures,
        policies,
        changes,
        List.of(),
        by,
        points);
  }

  /** Whose it is: who made it, or else the folder it lies in. */
  public String pupil() {
    return pupil(by, file);
  }

  /**
   * The same of a plan's own word and its file; {@code .} where neither tells.
   *
   * @param by who made it, as it says; may be empty
   */
  public static String pupil(String by, String file) {
    String folder = file.contains("/") ? file.substring(0, file.lastIndexOf('/')) : ".";
    return by.isEmpty() ? folder.substring(folder.lastIndexOf('/') + 1) : by;
  }

  /** Ids of the rules that found something, or failed; empty if none judged it. */
  public Optional<Set<String>> heard() {
    if (figures.isEmpty()) {
      return Optional.empty();
    }
    Set<String> heard = new HashSet<>();
    findings.forEach(found -> heard.add(found.rule()));
    failedRules.forEach(fault -> heard.add(fault.rule()));
    return Optional.of(heard);
  }

  /** The same at a place of a batch. */
  public Outcome at(int number, Optional<String> report) {
    return but(number, report, figures, gone);
  }

  /** The same with what the baseline had besides. */
  public Outcome with(List<Found> gone) {
    return but(number, report, figures, gone);
  }

  /**
   * The same with what to buy and to weigh, which few ask for.
   *
   * @param checked the plan that it came of
   */
  public Outcome supplied(Checked checked) {
    return checked instanceof Checked.Judged judged
        ? but(number, report, figures.map(f -> f.with(Supplies.of(judged))), gone)
        : this;
  }

  private Outcome but(
      int number, Optional<String> report, Optional<Figures> figures, List<Found> gone) {
    return new Outcome(
        number,
        file,
        title,
        report,
        verdict,
        sentence,
        findings,
        mistakes,
        failedRules,
        failure,
        figures,
        policies,
        changes,
        gone,
        by,
        points);
  }

  private static Found found(Finding finding, Keys keys, SourceMap source) {
    return new Found(
        finding.rule().id(),
        finding.severity(),
        keys.next(finding.rule().id(), finding.place().path()),
        finding.message(),
        finding.remedy(),
        finding.mends().stream().map(Outcome::fix).toList(),
        spot(finding.place(), source),
        finding.related().stream().map(place -> spot(place, source)).toList(),
        finding.marks(),
        finding.accepted().map(a -> a.because()),
        finding.acceptLine(),
        finding.since());
  }

  private static Fix fix(Mend mend) {
    return new Fix(
        mend.changes().stream()
            .map(c -> new Fix.Part(new Region(c.from(), c.to()), c.text()))
            .toList(),
        mend.end(),
        mend.risks());
  }

  private static Spot spot(Place place, SourceMap source) {
    PlanPath path = place.path();
    Position start = place.position();
    Position end = source.end(path);
    return new Spot(
        place.label(),
        path.text(),
        new Region(start, end.compareTo(start) < 0 ? start : end),
        place.excerpt());
  }

  /** Where a mistake ends nobody can tell, so its line is marked to the end. */
  private static Mistake mistake(Problem problem, List<String> lines) {
    Position start = problem.position();
    String line = start.line() <= lines.size() ? lines.get(start.line() - 1).stripTrailing() : "";
    Position end = new Position(start.line(), Math.max(start.column(), line.length() + 1));
    return new Mistake(
        problem.path().text(),
        new Region(start, end),
        problem.message(),
        line.length() > LONGEST_LINE ? "" : line);
  }
}
