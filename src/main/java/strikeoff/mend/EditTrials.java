package strikeoff.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.document.Edit;
import strikeoff.document.GivenUp;
import strikeoff.document.Replacement;
import strikeoff.document.Underway;
import strikeoff.document.yaml.Manuscript;
import strikeoff.findings.AcceptedSteps;
import strikeoff.findings.Finding;
import strikeoff.findings.Findings;
import strikeoff.findings.Mend;
import strikeoff.findings.Severity;
import strikeoff.plan.PrintPlan;

/**
 * Tries what rules say would mend their findings, each time by a whole check of the changed plan.
 * What makes the plan unreadable, leaves the finding or brings a new stop is not offered.
 */
public final class EditTrials {

  /** Changes tried of one plan; one with more to mend is mended step by step. */
  private static final int MOST = 24;

  /**
   * Impressions that all trials of a plan may come to, or lines of it if it has more of them, so
   * that one of thousands does not take many times as long as its check. Counted, not timed: the
   * same plan gets the same answer.
   */
  private static final int MOST_WORK = 15_000;

  /** What brings no new risk; then what changes fewest lines. */
  static final Comparator<Mend> BEST_FIRST =
      Comparator.comparing((Mend mend) -> mend.risks().size()).thenComparing(EditTrials::size);

  private final Checker checker;
  private int left;

  private EditTrials(Checker checker, int most) {
    this.checker = checker;
    this.left = most;
  }

  /** The same with the mends of each finding that nobody accepted. */
  public static Checked tried(Checked checked, Checker checker) {
    if (!(checked instanceof Checked.Judged judged)) {
      return checked;
    }
    if (judged.findings().stream().allMatch(f -> f.edits().isEmpty())) {
      return judged;
    }
    Underway.at(Underway.Stage.MENDING);
    int impressions = judged.facts().timeline().impressions().size();
    int each = Math.max(1, Math.max(impressions, judged.source().lines().size()));
    Checker trier = checker.withoutTrials();
    return new EditTrials(trier, Math.min(MOST, MOST_WORK / each))
        .tried(judged, counted(judged, checker, trier));
  }

  /**
   * The same plan with as many findings of each rule as its trials have; itself if nothing was cut.
   */
  static Checked.Judged counted(Checked.Judged judged, Checker told, Checker trier) {
    boolean cut =
        judged.findings().stream()
            .collect(Collectors.groupingBy(f -> f.rule().id(), Collectors.counting()))
            .values()
            .stream()
            .anyMatch(many -> many >= told.bounds().findings());
    return cut && trier.check(judged.file(), judged.source().text()) instanceof Checked.Judged all
        ? all
        : judged;
  }

  private Checked.Judged tried(Checked.Judged judged, Checked.Judged before) {
    Optional<Manuscript> text = Manuscript.of(judged.source().text());
    List<Finding> doubts = Findings.doubts(judged.findings());
    List<Finding> findings = new ArrayList<>();
    for (Finding finding : judged.findings()) {
      List<Mend> mends = new ArrayList<>();
      boolean wanted = finding.accepted().isEmpty() && doubts.stream().noneMatch(finding::restsOn);
      for (List<Edit> edits : wanted ? finding.edits() : noEdits()) {
        if (left > 0 && !GivenUp.isAsked()) {
          left--;
          text.flatMap(t -> mend(checker, before, finding, t, edits)).ifPresent(mends::add);
        }
      }
      mends.sort(BEST_FIRST);
      findings.add(mends.isEmpty() ? finding : finding.with(mends));
    }
    return judged.with(findings);
  }

  private static List<List<Edit>> noEdits() {
    return List.of();
  }

  /** How many lines change. */
  static int size(Mend mend) {
    return mend.hunks().stream().mapToInt(h -> h.gone().size() + h.come().size()).sum();
  }

  /**
   * Empty if the edits have no place in the text, leave the finding, bring a new stop or bring new
   * harm to cloth, paste or screen.
   */
  static Optional<Mend> mend(
      Checker checker, Checked.Judged before, Finding finding, Manuscript text, List<Edit> wanted) {
    List<Edit> edits = withAccepted(before.plan(), text, wanted);
    Optional<String> changed = text.with(edits);
    if (changed.isEmpty()) {
      return Optional.empty();
    }
    if (!(checker.check(changed.get(), before) instanceof Checked.Judged after)
        || !after.failedRules().isEmpty()
        || !clears(before, after, finding)
        || harms(before, after)) {
      return Optional.empty();
    }
    List<Replacement> changes = text.changes(edits).orElseThrow();
    return Optional.of(
        new Mend(
            edits,
            changes,
            Hunks.of(before.source().text(), changed.get()),
            end(before).equals(end(after)) ? Optional.empty() : Optional.of(end(after)),
            newRisks(before, after)));
  }

  /** With what they ask of acceptances: steps may come, go and move. */
  private static List<Edit> withAccepted(PrintPlan plan, Manuscript text, List<Edit> edits) {
    if (plan.acceptances().isEmpty()) {
      return edits;
    }
    Optional<Manuscript> after = text.with(edits).flatMap(Manuscript::of);
    List<Edit> all = new ArrayList<>(edits);
    after.ifPresent(
        now ->
            all.addAll(
                AcceptedSteps.following(
                    plan, AcceptedSteps.numbers(edits, plan.run().size()), now::has)));
    return all;
  }

  private static String end(Checked.Judged judged) {
    return judged.facts().timeline().finish().text();
  }

  /** One less of its rule, and of no rule more stops. Places move, so they are not compared. */
  private static boolean clears(Checked.Judged before, Checked.Judged after, Finding finding) {
    String rule = finding.rule().id();
    if (count(after, rule) >= count(before, rule)) {
      return false;
    }
    Map<String, Long> stops = byRule(before, Severity.STOP);
    return byRule(after, Severity.STOP).entrySet().stream()
        .allMatch(e -> e.getValue() <= stops.getOrDefault(e.getKey(), 0L));
  }

  /**
   * Not even a risk: a print that is better fixed on spoilt cloth is no better, nor is one that was
   * waited for with a paste that dies meanwhile.
   */
  private static boolean harms(Checked.Judged before, Checked.Judged after) {
    return after.findings().stream()
        .filter(f -> !f.rule().harms().isEmpty() && f.severity() != Severity.ADVICE)
        .map(f -> f.rule().id())
        .distinct()
        .anyMatch(rule -> count(after, rule) > count(before, rule));
  }

  private static long count(Checked.Judged judged, String rule) {
    return judged.findings().stream().filter(f -> f.rule().id().equals(rule)).count();
  }

  /** How many findings of a severity each rule has that nobody accepted. */
  static Map<String, Long> byRule(Checked.Judged judged, Severity severity) {
    return judged
        .of(severity)
        .filter(f -> f.accepted().isEmpty())
        .collect(Collectors.groupingBy(f -> f.rule().id(), HashMap::new, Collectors.counting()));
  }

  private static List<String> newRisks(Checked.Judged before, Checked.Judged after) {
    Map<String, Long> had = byRule(before, Severity.RISK);
    // A stop that has become a risk of the same rule is no new one.
    byRule(before, Severity.STOP).forEach((rule, many) -> had.merge(rule, many, Long::sum));
    Map<String, Long> has = byRule(after, Severity.RISK);
    return after
        .of(Severity.RISK)
        .filter(f -> f.accepted().isEmpty())
        .filter(f -> has.get(f.rule().id()) > had.getOrDefault(f.rule().id(), 0L))
        .map(f -> f.rule().summary())
        .distinct()
        .toList();
  }
}
