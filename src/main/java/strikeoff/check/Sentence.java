package strikeoff.check;

import java.util.ArrayList;
import java.util.List;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;

/** Puts the verdict on a judged plan into one sentence. */
final class Sentence {

  private Sentence() {}

  static String of(Checked.Judged plan) {
    List<String> parts = new ArrayList<>();
    long accepted = plan.of(Severity.STOP).filter(f -> !f.blocks()).count();
    add(parts, plan.of(Severity.STOP).filter(Finding::blocks).count(), "stop", "stops");
    add(parts, accepted, "accepted stop", "accepted stops");
    add(parts, plan.of(Severity.RISK).count(), "risk", "risks");
    add(parts, plan.of(Severity.ADVICE).count(), "piece of advice", "pieces of advice");
    String counts = parts.isEmpty() ? "nothing found" : joined(parts);
    if (!plan.faults().isEmpty()) {
      String failed = "the tool failed on " + counted(plan.faults().size(), "rule", "rules");
      counts = counts + ", and " + failed;
    }
    String verdict = plan.verdict().text();
    return Character.toUpperCase(verdict.charAt(0)) + verdict.substring(1) + ": " + counts + ".";
  }

  private static void add(List<String> parts, long count, String one, String many) {
    if (count > 0) {
      parts.add(counted(count, one, many));
    }
  }

  private static String counted(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  private static String joined(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }
}
