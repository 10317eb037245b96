package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.check.Example;
import strikeoff.findings.Finding;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.findings.Sources;
import strikeoff.policy.Default;
import strikeoff.policy.Glossary;
import strikeoff.policy.Limit;
import strikeoff.rulebook.own.OwnRule;
import strikeoff.studio.Setting;
import strikeoff.studio.Studio;

/** Explains one rule, line by line. */
public record ExplainText(Ink ink, int width, Checker checker) {

  private static final String LABELS = " ".repeat(10);

  /** What a word of the glossary means. */
  public List<String> word(String word) {
    List<String> lines = new ArrayList<>();
    lines.add(ink.bold(word));
    lines.addAll(Plain.wrap("  ", "  ", Glossary.all().get(word), width));
    return lines;
  }

  /** What a limit is, why, where it is known from, and the rules that compare with it. */
  public List<String> limit(Limit limit) {
    List<String> lines = new ArrayList<>();
    lines.add(ink.bold(limit.name()) + "  " + limit.value().text());
    lines.addAll(Plain.wrap("  ", "  ", limit.why(), width));
    lines.add("");
    labelled("Source", Sources.shown(limit.source()), lines);
    List<String> readers =
        checker.rules().rules().stream()
            .filter(rule -> rule.limits().contains(limit.name()))
            .map(RuleInfo::id)
            .sorted()
            .toList();
    if (!readers.isEmpty()) {
      labelled("Rules", String.join(", ", readers), lines);
    }
    return lines;
  }

  /** What a plan that leaves something open is taken to say. */
  public List<String> standard(Default<?> standard) {
    List<String> lines = new ArrayList<>();
    lines.add(ink.bold(standard.name()) + "  " + standard.text());
    lines.add("");
    labelled("Source", Sources.shown(standard.source()), lines);
    return lines;
  }

  public List<String> of(RuleInfo rule) {
    List<String> lines = new ArrayList<>();
    lines.add(
        ink.bold(rule.id())
            + "  "
            + rule.severities().stream()
                .map(severity -> ink.of(severity, severity.text().toUpperCase(Locale.ROOT)))
                .collect(Collectors.joining(" or ")));
    lines.addAll(Plain.wrap("  ", "  ", rule.summary(), width));
    lines.add("");
    labelled("Why", rule.because(), lines);
    labelled("Source", Sources.shown(rule.source()), lines);
    limits(rule, lines);
    settings(rule, lines);
    Optional<OwnRule> own = checker.rules().own().rule(rule.id());
    if (own.isPresent()) {
      text(own.get(), lines);
    } else {
      example(rule, lines);
    }
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
      lines.addAll(Plain.wrap("      Source: ", "      ", Sources.shown(limit.source()), width));
    }
  }

  /** What the studio's policy makes of it. */
  private void settings(RuleInfo rule, List<String> lines) {
    Studio studio = checker.studio();
    List<String> said = new ArrayList<>();
    Setting<Severity> counts = studio.severities().get(rule.id());
    if (counts != null) {
      said.add("Counts as " + counts.value().text() + ", set by " + counts.where() + ".");
    }
    Setting<String> off = studio.off().get(rule.id());
    if (off != null) {
      said.add("Off, set by " + off.where() + ": " + off.value());
    }
    studio.bars(rule.id()).ifPresent(w -> said.add("No plan may accept it, set by " + w + "."));
    if (!said.isEmpty()) {
      lines.add("");
      lines.add("  Policy");
      said.forEach(s -> lines.addAll(Plain.wrap("    ", "    ", s, width)));
    }
  }

  /** The studio's own rule as it stands in its file. */
  private void text(OwnRule own, List<String> lines) {
    lines.add("");
    lines.add("  Rule, " + Plain.line(own.file()) + ":" + own.line());
    own.text().forEach(line -> lines.add("    " + Plain.line(line)));
  }

  private void example(RuleInfo rule, List<String> lines) {
    Example example = Example.packaged(rule.id());
    lines.add("");
    lines.addAll(Plain.wrap("  Example   ", "  " + LABELS, example.situation(), width));
    lines.add("");
    listing(example, lines);
    if (checker.of(example).check("example.yaml", example.firingText())
        instanceof Checked.Judged judged) {
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
