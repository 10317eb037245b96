package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
import strikeoff.check.Checked;
import strikeoff.day.facts.Timeline;
import strikeoff.findings.Sources;
import strikeoff.plan.AssumedAlike;
import strikeoff.plan.PrintPlan;

/** Says a plan's main figures and what was assumed where it left a value open. */
record FigureText(int width) {

  private static final String INDENT = "    ";

  List<String> of(Checked.Judged checked) {
    PrintPlan plan = checked.plan();
    Timeline timeline = checked.facts().timeline();
    List<String[]> rows = new ArrayList<>();
    rows.add(
        row(
            "cloth",
            plan.cloth().length().clothText(plan.measures())
                + " by "
                + plan.cloth().width().text(plan.measures())
                + (plan.cloth().closed() ? ", closed into a tube" : "")));
    rows.add(row("copies", Integer.toString(checked.facts().layout().placements().size())));
    rows.add(row("impressions", Integer.toString(timeline.impressions().size())));
    if (!timeline.tasks().isEmpty()) {
      rows.add(row("starts", timeline.start().text()));
      rows.add(row("finishes", timeline.finish().text()));
      rows.add(row("work", timeline.handsOn().text()));
      rows.add(row("waiting", timeline.waiting().text()));
    }
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add("  Figures");
    table(rows, lines);
    if (!plan.assumptions().isEmpty()) {
      rows.clear();
      for (AssumedAlike assumed : AssumedAlike.of(plan.assumptions())) {
        int places = assumed.paths().size();
        String often = places == 1 ? "" : ", in " + places + " places";
        rows.add(
            row(
                assumed.name(),
                assumed.value() + often + " (" + Sources.shown(assumed.source()) + ")"));
      }
      lines.add("");
      lines.add("  Assumed, since the plan doesn't say");
      table(rows, lines);
    }
    return lines;
  }

  private static String[] row(String name, String value) {
    return new String[] {Plain.line(name), value};
  }

  /** Names on the left, values wrapped beside them. */
  private void table(List<String[]> rows, List<String> lines) {
    int longest = rows.stream().mapToInt(r -> Plain.columns(r[0])).max().orElse(0);
    int column = Math.min(longest, width / 2);
    String rest = INDENT + " ".repeat(column + 2);
    for (String[] row : rows) {
      int left = Plain.columns(row[0]);
      if (left > column) {
        lines.addAll(Plain.wrap(INDENT, INDENT, row[0], width));
        lines.addAll(Plain.wrap(rest, rest, row[1], width));
      } else {
        String first = INDENT + row[0] + " ".repeat(column - left + 2);
        lines.addAll(Plain.wrap(first, rest, row[1], width));
      }
    }
  }
}
