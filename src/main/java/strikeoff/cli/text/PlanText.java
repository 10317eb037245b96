package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.day.Moment;
import strikeoff.document.Position;
import strikeoff.document.Problem;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Finding;
import strikeoff.findings.Mend;
import strikeoff.findings.Place;
import strikeoff.findings.PolicyChange;
import strikeoff.findings.Severity;
import strikeoff.findings.Sources;
import strikeoff.plan.Dates;

/**
 * Says what came of one plan, line by line.
 *
 * @param width columns to write in
 * @param most findings or mistakes of one plan to tell; the rest is counted
 */
public record PlanText(Ink ink, int width, Detail detail, int most) {

  private static final String BODY = "    ";
  private static final int VERDICT_COLUMN = 15;

  /** More pieces of advice than these are told by their titles only. */
  private static final int ADVICE_IN_FULL = 2;

  private static final int MOST_CHANGES = 5;

  public List<String> of(Checked checked) {
    List<String> lines = new ArrayList<>();
    lines.addAll(verdict(checked));
    if (detail.verdictsAlone()) {
      return lines;
    }
    if (checked instanceof Checked.Judged judged) {
      judged(judged, lines);
    } else if (checked instanceof Checked.Unreadable unreadable) {
      unreadable(unreadable, lines);
    } else if (checked instanceof Checked.Failed failed && detail == Detail.FULL) {
      failed.trace().lines().forEach(line -> lines.add(BODY + Plain.line(line)));
    }
    return lines;
  }

  /**
   * That another run of a plan ends sooner.
   *
   * @param end when
   */
  public List<String> sooner(Checked.Judged plan, Moment end) {
    List<String> lines = new ArrayList<>(List.of(""));
    lines.addAll(
        Plain.wrap(
            "  ",
            BODY,
            "A quick look finds a run of the same prints that ends "
                + end.when()
                + " instead of "
                + plan.facts().timeline().finish().text()
                + ": `strikeoff propose` writes it, or a sooner one.",
            width));
    return lines;
  }

  private List<String> verdict(Checked checked) {
    Verdict verdict = checked.verdict();
    String word = verdict.text().toUpperCase(Locale.ROOT);
    String padded = word + " ".repeat(VERDICT_COLUMN - word.length());
    List<String> lines =
        Plain.wrap(
            padded,
            " ".repeat(VERDICT_COLUMN),
            checked.file() + ": " + withoutVerdict(checked.sentence(), verdict),
            // Whoever asks for verdicts only counts and sorts lines.
            detail.verdictsAlone() ? Integer.MAX_VALUE : width);
    List<String> inked = new ArrayList<>(lines);
    inked.set(0, ink.of(verdict, word) + lines.get(0).substring(word.length()));
    return inked;
  }

  /** The sentence opens with the verdict, which the line has said already. */
  private static String withoutVerdict(String sentence, Verdict verdict) {
    int cut = verdict.text().length() + 2;
    String rest = sentence.length() > cut ? sentence.substring(cut) : sentence;
    return rest.endsWith(".") ? rest.substring(0, rest.length() - 1) : rest;
  }

  private void judged(Checked.Judged plan, List<String> lines) {
    policy(plan.changes(), lines);
    Dates dates = plan.plan().hours().dates();
    dates
        .latestStart(plan.facts().timeline().finish().day())
        .ifPresent(
            latest ->
                lines.addAll(
                    Plain.wrap(
                        "  ",
                        BODY,
                        "Begin on "
                            + Dates.text(latest)
                            + " at the latest, to be done by "
                            + Dates.text(dates.finishBy().orElseThrow())
                            + ".",
                        width)));
    boolean titles = detail != Detail.FULL && plan.of(Severity.ADVICE).count() > ADVICE_IN_FULL;
    int told = 0;
    boolean afterBrief = false;
    for (Finding finding : plan.findings()) {
      if (told == most) {
        lines.add("");
        lines.add("  and " + (plan.findings().size() - most) + " more findings (--max-findings)");
        break;
      }
      told++;
      boolean brief =
          finding.severity() == Severity.ADVICE && titles
              || finding.isOld() && detail != Detail.FULL;
      if (!(brief && afterBrief)) {
        lines.add("");
      }
      afterBrief = brief;
      finding(plan.file(), finding, brief, lines);
    }
    for (FailedRule fault : plan.failedRules()) {
      lines.add("");
      lines.add("  " + ink.of(Verdict.NOT_CHECKED, "RULE FAILED") + "  " + fault.rule());
      lines.addAll(Plain.wrap(BODY, BODY, fault.what(), width));
    }
    plan.points()
        .ifPresent(
            points -> {
              lines.add("");
              String reasons = points.reasons().isEmpty() ? "" : "; taken: " + points.reasons();
              lines.addAll(Plain.wrap("  Points: ", BODY, points.text() + reasons, width));
            });
    plan.since()
        .filter(since -> !since.gone().isEmpty())
        .ifPresent(
            since -> {
              lines.add("");
              lines.addAll(
                  Plain.wrap(
                      "  Gone since the baseline: ", BODY, String.join(", ", since.gone()), width));
            });
    if (detail == Detail.FULL) {
      lines.addAll(new FigureText(width).of(plan));
    }
  }

  /** Whose policy the verdict rests on; more than a few only with every detail. */
  private void policy(List<PolicyChange> changes, List<String> lines) {
    int most = detail == Detail.FULL ? changes.size() : Math.min(MOST_CHANGES, changes.size());
    if (!changes.isEmpty()) {
      lines.add("");
    }
    for (PolicyChange change : changes.subList(0, most)) {
      lines.addAll(Plain.wrap("  Policy: ", "          ", change.text(), width));
    }
    if (most < changes.size()) {
      lines.add("  Policy: and " + (changes.size() - most) + " more changes (--verbose)");
    }
  }

  private void finding(String file, Finding finding, boolean brief, List<String> lines) {
    Severity severity = finding.severity();
    lines.add(
        "  "
            + at(file, finding.place().position())
            + "  "
            + ink.of(severity, severity.text().toUpperCase(Locale.ROOT))
            + "  "
            + finding.rule().id()
            + finding.since().map(since -> "  (" + since.spoken() + ")").orElse(""));
    if (brief) {
      lines.addAll(Plain.wrap(BODY, BODY, finding.rule().summary(), width));
      return;
    }
    lines.addAll(Plain.wrap(BODY, BODY, finding.message(), width));
    said("Mend: ", finding.remedy(), lines);
    mends(finding.mends(), lines);
    finding.accepted().ifPresent(a -> said("Accepted: ", a.because(), lines));
    if (finding.severity() != Severity.ADVICE || detail == Detail.FULL) {
      finding.acceptLine().ifPresent(line -> said("Accept: ", line, lines));
    }
    if (detail == Detail.FULL) {
      said("Why: ", finding.rule().because(), lines);
      said("Source: ", Sources.shown(finding.rule().source()), lines);
      for (Place place : finding.related()) {
        said("See: ", place.label() + ", " + file + ":" + place.position(), lines);
      }
    }
  }

  /** Lines to write as they stand; further ways only with every detail. */
  private void mends(List<Mend> mends, List<String> lines) {
    for (Mend mend : detail == Detail.FULL ? mends : mends.stream().limit(1).toList()) {
      String costs = mend.costs().isEmpty() ? "" : "; " + mend.costs();
      lines.addAll(Plain.wrap(BODY, BODY, "Write (tried" + costs + "):", width));
      for (Mend.Hunk hunk : mend.hunks()) {
        written(hunk.line(), "-", hunk.gone(), lines);
        written(hunk.line(), "+", hunk.come(), lines);
      }
    }
  }

  private void written(int first, String sign, List<String> changed, List<String> lines) {
    int number = first;
    for (String line : changed) {
      String indent = line.substring(0, line.length() - line.stripLeading().length());
      String label = String.format(Locale.ROOT, "%s%5d %s %s", BODY, number++, sign, indent);
      lines.addAll(Plain.wrap(label, " ".repeat(label.length() + 2), line.strip(), width));
    }
  }

  private void said(String label, String text, List<String> lines) {
    lines.addAll(Plain.wrap(BODY + label, BODY + " ".repeat(label.length()), text, width));
  }

  private void unreadable(Checked.Unreadable plan, List<String> lines) {
    int told = 0;
    for (Problem problem : plan.problems()) {
      lines.add("");
      if (told == most) {
        lines.add("  and " + (plan.problems().size() - most) + " more mistakes (--max-findings)");
        break;
      }
      told++;
      String path = problem.path().spoken();
      lines.add(
          "  "
              + at(plan.file(), problem.position())
              + (path.isEmpty() ? "" : "  " + ink.bold(Plain.line(path))));
      lines.addAll(Plain.wrap(BODY, BODY, problem.message(), width));
    }
  }

  private static String at(String file, Position position) {
    return Plain.line(file) + ":" + position;
  }
}
