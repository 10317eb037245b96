package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strikeoff.report.compare.Change;
import strikeoff.report.compare.Comparison;
import strikeoff.report.compare.PlanChange;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Mistake;

/**
 * Says what changed between two versions, line by line.
 *
 * @param all true to tell also plans that didn't change, and what to do about what is left
 */
public record CompareText(Ink ink, int width, boolean all) {

  private static final String BODY = "    ";

  public List<String> of(Comparison comparison) {
    List<String> lines = new ArrayList<>();
    List<String> overview = new ArrayList<>();
    int same = 0;
    for (PlanChange plan : comparison.plans()) {
      if (plan.same() && !all) {
        same++;
      } else {
        plan(plan, lines);
        lines.add("");
        overview.addAll(overview(plan));
      }
    }
    if (comparison.plans().size() > 1 && !overview.isEmpty()) {
      lines.addAll(overview);
      lines.add("");
    }
    if (same > 0) {
      lines.add(same + (same == 1 ? " plan is as it was." : " plans are as they were."));
    }
    lines.add(comparison.sentence());
    return lines;
  }

  /** The end of a long output is what is seen first: a plan in a line. */
  private List<String> overview(PlanChange plan) {
    String counts =
        plan.after().isEmpty()
            ? ""
            : ": mended "
                + PlanChange.count(plan.mended())
                + ", new "
                + PlanChange.count(plan.fresh())
                + ", left "
                + PlanChange.count(plan.left());
    return Plain.wrap("", BODY, plan.name() + ": " + plan.verdict() + counts, width);
  }

  private void plan(PlanChange plan, List<String> lines) {
    lines.addAll(Plain.wrap("", BODY, plan.name() + ": " + plan.verdict(), width));
    if (!plan.remark().isEmpty()) {
      lines.addAll(Plain.wrap("  ", BODY, plan.remark(), width));
    }
    plan.mended().forEach(f -> found("mended", f, false, lines));
    plan.fresh().forEach(f -> found("new", f, true, lines));
    plan.left().forEach(f -> found("left", f, all, lines));
    for (Mistake mistake : plan.mistakes()) {
      String path = mistake.path().isEmpty() ? "" : mistake.path() + ": ";
      lines.addAll(
          Plain.wrap(
              "  unreadable  ",
              BODY,
              "line " + mistake.region().start().line() + ": " + path + mistake.message(),
              width));
    }
    for (Change change : plan.figures()) {
      String by = change.difference().isEmpty() ? "" : " (" + change.difference() + ")";
      lines.addAll(
          Plain.wrap(
              "  ",
              BODY,
              change.name() + ": " + change.before() + " → " + change.after() + by,
              width));
    }
  }

  private void found(String fate, Found found, boolean remedy, List<String> lines) {
    String severity = found.severity().text().toUpperCase(Locale.ROOT);
    lines.add(
        "  "
            + ink.bold(fate)
            + " ".repeat(8 - fate.length())
            + ink.of(found.severity(), severity)
            + " ".repeat(8 - severity.length())
            + found.rule());
    lines.addAll(Plain.wrap(BODY, BODY, found.message(), width));
    if (remedy) {
      lines.addAll(Plain.wrap(BODY + "Mend: ", BODY + "      ", found.remedy(), width));
    }
  }
}
