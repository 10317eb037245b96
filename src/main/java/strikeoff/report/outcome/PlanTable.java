package strikeoff.report.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.PolicyChange;
import strikeoff.findings.Severity;
import strikeoff.units.Numbers;

/**
 * Results as a table for spreadsheets, a plan in a row: CSV as RFC 4180 has it, in UTF-8, with a
 * head. A text that a spreadsheet would take for a formula has an apostrophe before it: what a
 * class hands in must not compute.
 */
public final class PlanTable {

  /** The head; columns are only added, behind the others. */
  public static final String HEAD =
      "number,file,title,by,verdict,stops,risks,advice,accepted,finish,points,of,taken,"
          + "let pass,old,rules left out";

  private static final String LINE = "\r\n";

  private PlanTable() {}

  /** The same bytes for the same results. */
  public static String text(Results results) {
    StringBuilder table = new StringBuilder(HEAD).append(LINE);
    for (Outcome plan : results.plans()) {
      table
          .append(
              row(plan, results).stream().map(PlanTable::quoted).collect(Collectors.joining(",")))
          .append(LINE);
    }
    return table.toString();
  }

  private static List<String> row(Outcome plan, Results results) {
    List<String> row = new ArrayList<>();
    row.add(Integer.toString(plan.number()));
    row.add(safe(plan.file()));
    row.add(safe(plan.title()));
    row.add(safe(plan.by()));
    row.add(plan.verdict().text());
    boolean judged = plan.figures().isPresent();
    for (Severity severity : Severity.values()) {
      row.add(
          judged
              ? Long.toString(
                  plan.findings().stream()
                      .filter(f -> f.severity() == severity && f.accepted().isEmpty())
                      .count())
              : "");
    }
    row.add(
        judged
            ? Long.toString(plan.findings().stream().filter(f -> f.accepted().isPresent()).count())
            : "");
    row.add(plan.figures().flatMap(Figures::finish).map(f -> f.text()).orElse(""));
    row.add(plan.points().map(p -> Numbers.plain(p.points(), 2)).orElse(""));
    row.add(plan.points().map(p -> Numbers.plain(p.of(), 2)).orElse(""));
    row.add(plan.points().map(PointsGiven::reasons).orElse(""));
    row.add(judged ? Long.toString(PolicyChange.passed(plan.changes())) : "");
    row.add(
        judged && results.baseline().isPresent()
            ? Long.toString(plan.findings().stream().filter(Found::isOld).count())
            : "");
    row.add(results.narrowed().map(n -> Integer.toString(n.leftOut().size())).orElse("0"));
    return row;
  }

  private static String safe(String text) {
    return text.isEmpty() || "=+-@\t\r".indexOf(text.charAt(0)) < 0 ? text : "'" + text;
  }

  private static String quoted(String cell) {
    return cell.chars().anyMatch(c -> ",\"\r\n".indexOf(c) >= 0)
        ? '"' + cell.replace("\"", "\"\"") + '"'
        : cell;
  }
}
