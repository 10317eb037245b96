package strikeoff.cli.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.Checker;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.ExplainText;
import strikeoff.cli.text.Surroundings;
import strikeoff.findings.RuleInfo;
import strikeoff.policy.Default;
import strikeoff.policy.Glossary;
import strikeoff.policy.Limit;
import strikeoff.units.Spelling;

/** Explains single rules, and words of the trade. */
final class ExplainCommand implements Command {

  private final Surroundings here;

  private final PositionalParamSpec ids =
      Options.parameters(
          true,
          "RULE|WORD|LIMIT",
          "Id of a rule, as in drying/frame-on-wet-film, a word of the trade, as in frame-safe, or a"
              + " limit or default, as in time/over-closing or cloth.mass.");

  private final StudioOptions studioOptions = new StudioOptions();

  private final Usual usual = new Usual();

  private final CommandSpec spec =
      Options.command(
          this,
          "explain",
          "Explains a rule: why it matters, where it is known from, the limits it reads, and an"
              + " example with its mended twin; or says what a word of the trade means, or what a"
              + " limit or default is and where it comes from.");

  ExplainCommand(Surroundings here) {
    this.here = here;
    spec.addPositional(ids).usageMessage().sortOptions(true);
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
    Studios studios = Studios.of(here, studioOptions);
    if (!studios.wrong().isEmpty()) {
      studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
      return studios.exit().code();
    }
    Checker checker = studios.checker();
    ExplainText text = new ExplainText(usual.ink(here), here.width(), checker);
    List<List<String>> told = new ArrayList<>();
    for (String asked : Options.listed(ids)) {
      told.add(explained(checker, text, asked));
    }
    boolean first = true;
    for (List<String> lines : told) {
      here.out().print(first ? "" : "\n");
      first = false;
      lines.forEach(line -> here.out().print(line + "\n"));
    }
    return Exit.PRINTABLE.code();
  }

  private List<String> explained(Checker checker, ExplainText text, String asked) {
    Optional<String> word = Glossary.word(asked);
    Limit limit = checker.policy().limits().get(asked);
    Default<?> standard = checker.policy().defaults().get(asked);
    if (word.isPresent()) {
      return text.word(word.get());
    } else if (standard != null) {
      return text.standard(standard);
    } else if (limit != null && checker.rule(asked).isEmpty()) {
      return text.limit(limit);
    }
    return text.of(known(checker, asked));
  }

  private RuleInfo known(Checker checker, String id) {
    Optional<RuleInfo> rule = checker.rule(id);
    return rule.orElseThrow(
        () -> {
          List<String> all = new ArrayList<>(checker.rules().ids());
          all.addAll(checker.policy().limits().keySet());
          all.addAll(checker.policy().defaults().keySet());
          return new ParameterException(
              spec.commandLine(),
              "no rule, limit or word is called “"
                  + id
                  + "”"
                  + near(id, all)
                  + " (strikeoff rules lists all rules)");
        });
  }

  /** A slip in the id, or the fault's name without its family. */
  private static String near(String id, List<String> all) {
    List<String> faults = all.stream().filter(r -> r.endsWith("/" + id)).toList();
    List<String> known = new ArrayList<>(Glossary.all().keySet());
    known.addAll(all);
    return faults.isEmpty()
        ? Spelling.didYouMean(id, known)
        : "; did you mean “" + faults.get(0) + "”?";
  }
}
