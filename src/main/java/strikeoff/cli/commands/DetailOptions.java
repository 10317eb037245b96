package strikeoff.cli.commands;

import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import strikeoff.cli.text.Detail;

/** Options that say how much is told of a plan. */
final class DetailOptions {

  private final OptionSpec quiet =
      Options.flag(
          "Tell only which plans fail, a line each, and which pass because a policy lets them.",
          "-q",
          "--quiet");

  private final OptionSpec verdicts =
      Options.flag("Tell the verdicts only, a line for each plan.", "--verdicts");

  private final OptionSpec verbose =
      Options.verbose("Tell also reasons, sources, the plan's figures and what was assumed.");

  private final OptionSpec materials =
      Options.flag(
          "Tell also what to buy for the run, and what to weigh for each paste and bath.",
          "--materials");

  void addTo(CommandSpec spec) {
    spec.addOption(quiet).addOption(verdicts).addOption(verbose).addOption(materials);
  }

  /** What is wrong with how they are given together, if something is. */
  Optional<String> misuse() {
    long details =
        Stream.of(quiet, verdicts, verbose).filter(OptionSpec::<Boolean>getValue).count();
    if (details > 1) {
      return Optional.of("one of --quiet, --verdicts and --verbose, not several");
    }
    return materials() && chosen().verdictsAlone()
        ? Optional.of("--materials tells more of each plan, and --quiet and --verdicts a line only")
        : Optional.empty();
  }

  Detail chosen() {
    return quiet.<Boolean>getValue()
        ? Detail.QUIET
        : verdicts.<Boolean>getValue()
            ? Detail.VERDICTS
            : verbose.<Boolean>getValue() ? Detail.FULL : Detail.USUAL;
  }

  /** Whether what to buy and to weigh is told. */
  boolean materials() {
    return materials.getValue();
  }
}
