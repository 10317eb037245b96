package strikeoff.check;

import java.util.ArrayList;
import java.util.List;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;
import strikeoff.units.Phrase;

/** Puts the verdict on a judged plan into one sentence. */
final class VerdictSentence {

  private VerdictSentence() {}

  static String of(Checked.Judged plan) {
    List<String> parts = new ArrayList<>();
    int accepted = plan.acceptedStops();
    boolean printable = plan.verdict() == Verdict.PRINTABLE;
    add(parts, plan.of(Severity.STOP).filter(Finding::blocks).count(), "stop", "stops");
    if (!printable) {
      add(parts, accepted, "accepted stop", "accepted stops");
    }
    add(parts, plan.of(Severity.RISK).count(), "risk", "risks");
    add(parts, plan.of(Severity.ADVICE).count(), "piece of advice", "pieces of advice");
    String counts = parts.isEmpty() ? "nothing found" : Phrase.list(parts);
    if (!plan.failedRules().isEmpty()) {
      String failed = "the tool failed on " + counted(plan.failedRules().size(), "rule", "rules");
      counts = counts + ", and " + failed;
    }
    String verdict = verdict(plan.verdict(), accepted);
    String passed =
        passed(plan.passed())
            + plan.since().map(s -> "; " + s.counted()).orElse("")
            + plan.narrowed().map(n -> "; " + n.counted()).orElse("");
    if (printable && accepted > 0 && parts.isEmpty()) {
      return Phrase.capital(verdict) + passed + ".";
    }
    String sign = printable && accepted > 0 ? "; " : ": ";
    return Phrase.capital(verdict) + sign + counts + passed + ".";
  }

  /** A printable plan says first of all what it was let through with. */
  static String verdict(Verdict verdict, int acceptedStops) {
    return verdict == Verdict.PRINTABLE && acceptedStops > 0
        ? verdict.text() + ", " + counted(acceptedStops, "stop", "stops") + " accepted"
        : verdict.text();
  }

  /** Whoever reads the verdict alone must not take it for the program's own. */
  private static String passed(int stops) {
    return stops == 0 ? "" : "; a policy lets " + counted(stops, "stop", "stops") + " pass";
  }

  private static void add(List<String> parts, long count, String one, String many) {
    if (count > 0) {
      parts.add(counted(count, one, many));
    }
  }

  private static String counted(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }
}
