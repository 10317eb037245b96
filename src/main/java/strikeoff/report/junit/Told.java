package strikeoff.report.junit;

import java.util.ArrayList;
import java.util.List;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;

/** Says findings as lines that begin with file, line and column. */
final class Told {

  private Told() {}

  static List<String> of(Outcome plan, Found found) {
    List<String> lines = new ArrayList<>();
    lines.add(
        plan.file()
            + ":"
            + found.place().region().start()
            + ": "
            + found.severity().text()
            + " "
            + found.rule());
    lines.add("  " + found.message());
    lines.add("  Mend: " + found.remedy());
    found.accepted().ifPresent(reason -> lines.add("  Accepted: " + reason));
    return lines;
  }

  /** The verdict, and whatever fails no case. */
  static List<String> about(Outcome plan) {
    List<String> lines = new ArrayList<>();
    lines.add(plan.sentence());
    plan.findings().stream().filter(f -> !f.blocks()).forEach(f -> lines.addAll(of(plan, f)));
    return lines;
  }
}
