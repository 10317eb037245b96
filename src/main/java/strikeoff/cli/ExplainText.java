package strikeoff.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.check.Example;
import strikeoff.findings.Finding;
import strikeoff.findings.RuleInfo;
import strikeoff.policy.Limit;

/** Explains one rule, line by line. */
record ExplainText(Ink ink, int width, Checker checker) {

  private static final String LABELS = " ".repeat(10);

  List<String> of(RuleInfo rule) {
    List<String> lines = new ArrayList<>();
    lines.add(
        ink.bold(rule.id())
            + "  "
            + ink.of(rule.severity(), rule.severity().text().toUpperCase(Locale.ROOT)));
    lines.addAll(Plain.wrap("  ", "  ", rule.summary(), width));
    lines.add("");
    labelled("Why", rule.because(), lines);
    labelled("Source", rule.source(), lines);
    limits(rule, lines);
    example(rule, lines);
    return lines;
  }

  private void limits(RuleInfo rule, List<String> lines) {
    if (rule.limits().isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("  Limits");
    for (String name : rule.limits()) {
      Limit limit = checker.policy().limit(name);
      lines.add("    " + limit.name() + "  " + ink.bold(limit.value().text()));
      lines.addAll(Plain.wrap("      ", "      ", limit.why(), width));
      lines.addAll(Plain.wrap("      Source: ", "      ", limit.source(), width));
    }
  }

  private void example(RuleInfo rule, List<String> lines) {
    Example example = Example.packaged(rule.id());
    lines.add("");
    lines.addAll(Plain.wrap("  Example   ", "  " + LABELS, example.situation(), width));
    lines.add("");
    listing(example, lines);
    if (checker.check("example.yaml", example.firingText()) instanceof Checked.Judged judged) {
      judged.findings().stream()
          .filter(f -> f.rule().id().equals(rule.id()))
          .findFirst()
          .ifPresent(f -> says(f, lines));
    }
  }

  private void says(Finding finding, List<String> lines) {
    lines.add("");
    labelled(
        "Finds", "line " + finding.place().position().line() + ": " + finding.message(), lines);
    labelled("Mend", finding.remedy(), lines);
  }

  /** The plan that fires, with the lines that mend it beside those they replace. */
  private void listing(Example example, List<String> lines) {
    for (int i = 0; i < example.firing().size(); i++) {
      String fires = example.firing().get(i);
      String mended = example.twin().get(i);
      boolean comment = fires.startsWith("#");
      if (fires.equals(mended)) {
        if (!fires.isBlank() && !comment) {
          lines.addAll(listed("      ", fires));
        }
        continue;
      }
      if (!fires.isBlank()) {
        lines.addAll(listed("    - ", fires));
      }
      if (!mended.isBlank()) {
        lines.addAll(listed("    + ", mended));
      }
    }
  }

  /** A long line goes on below, further in, where YAML still reads it as one. */
  private List<String> listed(String mark, String line) {
    String words = line.stripLeading();
    String indent = " ".repeat(line.length() - words.length());
    return Plain.wrap(mark + indent, " ".repeat(mark.length()) + indent + "    ", words, width);
  }

  private void labelled(String label, String text, List<String> lines) {
    String first = "  " + label + " ".repeat(LABELS.length() - label.length());
    lines.addAll(Plain.wrap(first, "  " + LABELS, text, width));
  }
}
