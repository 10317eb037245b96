package strikeoff.cli.commands;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import strikeoff.findings.Narrowed;
import strikeoff.findings.RuleInfo;
import strikeoff.units.Script;
import strikeoff.units.Spelling;

/** Options that ask for some rules only. */
final class Narrowing {

  private final OptionSpec only =
      option(
          "--only",
          "Judge by these rules and families only, as drying or drying/frame-on-wet-film. What was"
              + " left out is told with every verdict. Several are parted by commas, or given again.");

  private final OptionSpec skip =
      option("--skip", "Don't judge by these rules and families; told likewise.");

  private static OptionSpec option(String name, String description) {
    return Options.words(description, "RULES", name)
        .type(List.class)
        .auxiliaryTypes(String.class)
        .build();
  }

  void addTo(CommandSpec spec) {
    spec.addOption(only).addOption(skip);
  }

  boolean isAsked() {
    return !names(only).isEmpty() || !names(skip).isEmpty();
  }

  /** What it makes of these rules. */
  Narrowed of(List<String> rules) {
    return Narrowed.of(names(only), names(skip), rules);
  }

  /** What is wrong with what was asked, one line each. */
  List<String> wrong(List<RuleInfo> rules) {
    Set<String> known = new TreeSet<>();
    for (RuleInfo rule : rules) {
      known.add(rule.id());
      known.add(rule.family());
    }
    List<String> wrong = new ArrayList<>();
    for (OptionSpec option : List.of(only, skip)) {
      for (String name : names(option)) {
        if (!known.contains(name)) {
          wrong.add(
              option.longestName()
                  + ": no rule or family is called "
                  + Script.quoted(name)
                  + Spelling.didYouMean(name, known));
        }
      }
    }
    if (wrong.isEmpty() && of(rules.stream().map(RuleInfo::id).toList()).isNothing()) {
      wrong.add("--only and --skip leave no rule to judge by");
    }
    return wrong;
  }

  private static List<String> names(OptionSpec option) {
    List<String> names = option.getValue();
    return names == null
        ? List.of()
        : names.stream()
            .flatMap(given -> Arrays.stream(given.split(",", -1)))
            .map(String::strip)
            .distinct()
            .toList();
  }
}
