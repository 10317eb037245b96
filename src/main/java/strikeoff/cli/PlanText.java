package strikeoff.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strikeoff.check.Checked;
import strikeoff.check.Verdict;
import strikeoff.findings.Finding;
import strikeoff.findings.Place;
import strikeoff.findings.RuleFault;
import strikeoff.findings.Severity;
import strikeoff.plan.Position;
import strikeoff.plan.Problem;

/**
 * Says what came of one plan, line by line.
 *
 * @param width columns to write in
 * @param most findings or mistakes of one plan to tell; the rest is counted
 */
record PlanText(Ink ink, int width, Detail detail, int most) {

  private static final String BODY = "    ";
  private static final int VERDICT_COLUMN = 15;

  List<String> of(Checked checked) {
    List<String> lines = new ArrayList<>();
    lines.addAll(verdict(checked));
    if (detail == Detail.QUIET) {
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
            detail == Detail.QUIET ? Integer.MAX_VALUE : width);
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
    int told = 0;
    boolean afterBrief = false;
    for (Finding finding : plan.findings()) {
      if (told == most) {
        lines.add("");
        lines.add("  and " + (plan.findings().size() - most) + " more findings (--max-findings)");
        break;
      }
      told++;
      boolean brief = finding.severity() == Severity.ADVICE && detail != Detail.FULL;
      if (!(brief && afterBrief)) {
        lines.add("");
      }
      afterBrief = brief;
      finding(plan.file(), finding, brief, lines);
    }
    for (RuleFault fault : plan.faults()) {
      lines.add("");
      lines.add("  " + ink.of(Verdict.NOT_CHECKED, "RULE FAILED") + "  " + fault.rule());
      lines.addAll(Plain.wrap(BODY, BODY, fault.what(), width));
    }
    if (detail == Detail.FULL) {
      lines.addAll(new FigureText(width).of(plan));
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
            + finding.rule().id());
    if (brief) {
      lines.addAll(Plain.wrap(BODY, BODY, finding.rule().summary(), width));
      return;
    }
    lines.addAll(Plain.wrap(BODY, BODY, finding.message(), width));
    said("Mend: ", finding.remedy(), lines);
    finding.accepted().ifPresent(a -> said("Accepted: ", a.because(), lines));
    if (detail == Detail.FULL) {
      said("Why: ", finding.rule().because(), lines);
      said("Source: ", finding.rule().source(), lines);
      for (Place place : finding.related()) {
        said("See: ", place.label() + ", " + file + ":" + place.position(), lines);
      }
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
      String path = problem.path().text();
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
