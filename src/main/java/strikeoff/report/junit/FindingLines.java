package strikeoff.report.junit;

import java.util.ArrayList;
import java.util.List;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;

/** Says findings as lines that begin with file, line and column. */
final class FindingLines {

  private FindingLines() {}

  static List<String> of(Outcome plan, Found found) {
    List<String> lines = new ArrayList<>();
    lines.add(
        plan.file()
            + ":"
            + found.place().region().start()
            + ": "
            + found.severity().text()
            + " "
            + found.rule()
            + found.since().map(since -> " (" + since.spoken() + ")").orElse(""));
    lines.add("  " + found.message());
    lines.add("  Mend: " + found.remedy());
    found.accepted().ifPresent(reason -> lines.add("  Accepted: " + reason));
    return lines;
  }
}
