package strikeoff.plan.yaml;

import java.util.List;
import strikeoff.document.Problem;
import strikeoff.document.SourceMap;
import strikeoff.plan.PrintPlan;

/** What came of reading a file as a plan. */
public sealed interface PlanReading {

  /** The file as the user named it. */
  String file();

  /** A plan, complete and consistent, with defaults filled in. */
  record Readable(PrintPlan plan, SourceMap map) implements PlanReading {
    @Override
    public String file() {
      return map.file();
    }
  }

  /**
   * No plan.
   *
   * @param problems every mistake, down the file; at least one
   * @param lines the file's text for quoting; empty if it could not be decoded
   * @param by who made it, as it says; empty if it doesn't, or nobody can tell
   */
  record Unreadable(String file, List<Problem> problems, List<String> lines, String by)
      implements PlanReading {
    public Unreadable {
      problems = List.copyOf(problems);
      lines = List.copyOf(lines);
    }
  }
}
