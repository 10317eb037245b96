package strikeoff.cli.commands;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import strikeoff.check.Checker;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.Plain;
import strikeoff.cli.text.PolicyText;
import strikeoff.cli.text.Surroundings;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.policy.yaml.PolicyReader;

/** Lists what is judged. */
final class RulesCommand implements Command {

  private static final int SEVERITY_COLUMN = 8;

  private final Surroundings here;

  private final StudioOptions studioOptions = new StudioOptions();

  private final Usual usual = new Usual();

  private final CommandSpec spec =
      Options.command(
          this, "rules", "Lists the rules by family, with their severity and what they find.");

  RulesCommand(Surroundings here) {
    this.here = here;
    spec.usageMessage().sortOptions(true);
    studioOptions.addTo(spec);
    usual.addTo(spec);
    Options.exits(spec, Exit.PRINTED, Exit.WRONG_POLICY, Exit.POLICY_FAILED);
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    Ink ink = usual.ink(here);
    Studios studios = Studios.of(here, studioOptions);
    if (!studios.wrong().isEmpty()) {
      studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
      return studios.exit().code();
    }
    Checker checker = studios.checker();
    List<RuleInfo> found = checker.rules().rules().stream().map(checker.studio()::counted).toList();
    List<String> families = new ArrayList<>(PolicyReader.families());
    // A studio's own families come after the built-in ones.
    found.stream().map(RuleInfo::family).filter(f -> !families.contains(f)).forEach(families::add);
    List<RuleInfo> rules =
        found.stream()
            .sorted(Comparator.comparing(rule -> families.indexOf(rule.family())))
            .toList();
    String family = "";
    int ids = 0;
    for (RuleInfo rule : rules) {
      if (!rule.family().equals(family)) {
        here.out().print((family.isEmpty() ? "" : "\n") + ink.bold(rule.family()) + "\n");
        family = rule.family();
        ids = longestId(rules, family) + 2;
      }
      row(rule, ids, ink);
    }
    if (!checker.studio().files().isEmpty()) {
      new PolicyText(here.width(), ink).of(checker).forEach(line -> here.out().print(line + "\n"));
    }
    here.out().print("\n" + counts(rules) + "\n");
    return Exit.PRINTABLE.code();
  }

  private static int longestId(List<RuleInfo> rules, String family) {
    return rules.stream()
        .filter(rule -> rule.family().equals(family))
        .mapToInt(rule -> rule.id().length())
        .max()
        .orElse(0);
  }

  private void row(RuleInfo rule, int ids, Ink ink) {
    String severity = rule.severity().text().toUpperCase(Locale.ROOT);
    String head =
        "  "
            + severity
            + " ".repeat(SEVERITY_COLUMN - severity.length())
            + rule.id()
            + " ".repeat(ids - rule.id().length());
    String rest = " ".repeat(head.length());
    List<String> lines = Plain.wrap(head, rest, rule.summary(), here.width());
    String first = lines.get(0).replaceFirst(severity, ink.of(rule.severity(), severity));
    here.out().print(first + "\n");
    lines.stream().skip(1).forEach(line -> here.out().print(line + "\n"));
  }

  private static String counts(List<RuleInfo> rules) {
    StringBuilder counts =
        new StringBuilder(rules.size() + (rules.size() == 1 ? " rule:" : " rules:"));
    for (Severity severity : Severity.values()) {
      long count = rules.stream().filter(r -> r.severity() == severity).count();
      counts
          .append(severity == Severity.STOP ? " " : ", ")
          .append(count)
          .append(' ')
          .append(severity.text());
    }
    return counts.append(". strikeoff explain RULE tells more of one.").toString();
  }
}
