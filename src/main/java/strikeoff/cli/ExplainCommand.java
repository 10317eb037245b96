package strikeoff.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.Checker;
import strikeoff.findings.RuleInfo;
import strikeoff.units.Spelling;

/** Explains single rules. */
final class ExplainCommand implements Command {

  private final Surroundings here;

  private final PositionalParamSpec ids =
      Options.parameters(true, "RULE", "Id of a rule, as in drying/frame-on-wet-film.");

  private final StudioOptions studioOptions = new StudioOptions();

  private final Usual usual = new Usual();

  private final CommandSpec spec =
      Options.command(
          this,
          "explain",
          "Explains a rule: why it matters, where it is known from, the limits it reads, and an"
              + " example with its mended twin.");

  ExplainCommand(Surroundings here) {
    this.here = here;
    spec.addPositional(ids).usageMessage().sortOptions(true);
    studioOptions.addTo(spec);
    usual.addTo(spec);
    Options.exits(spec, Exit.PRINTED, Exit.WRONG_USAGE, Exit.TOOL_FAILED);
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    Studios studios = Studios.of(here, studioOptions);
    if (!studios.wrong().isEmpty()) {
      studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
      return Exit.USAGE.code();
    }
    Checker checker = studios.checker();
    List<RuleInfo> rules = new ArrayList<>();
    for (String id : Options.listed(ids)) {
      rules.add(known(checker, id));
    }
    ExplainText text = new ExplainText(usual.ink(here), here.width(), checker);
    boolean first = true;
    for (RuleInfo rule : rules) {
      here.out().print(first ? "" : "\n");
      first = false;
      text.of(rule).forEach(line -> here.out().print(line + "\n"));
    }
    return Exit.PRINTABLE.code();
  }

  private RuleInfo known(Checker checker, String id) {
    Optional<RuleInfo> rule = checker.rule(id);
    return rule.orElseThrow(
        () -> {
          List<String> all = checker.rules().ids();
          return new ParameterException(
              spec.commandLine(),
              "no rule is called “"
                  + id
                  + "”"
                  + near(id, all)
                  + " (strikeoff rules lists them all)");
        });
  }

  /** A slip in the id, or the fault's name without its family. */
  private static String near(String id, List<String> all) {
    List<String> faults = all.stream().filter(r -> r.endsWith("/" + id)).toList();
    return faults.isEmpty()
        ? Spelling.didYouMean(id, all)
        : "; did you mean “" + faults.get(0) + "”?";
  }
}
