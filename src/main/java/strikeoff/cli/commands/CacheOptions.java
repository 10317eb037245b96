package strikeoff.cli.commands;

import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import strikeoff.cli.files.ResultCache;
import strikeoff.cli.text.Surroundings;

/** Options that keep what came of plans for later runs. */
final class CacheOptions {

  /** The variable that holds what entries of a cache are sealed with. */
  private static final String SECRET = "STRIKEOFF_CACHE_SECRET";

  private final OptionSpec folder =
      Options.word(
          "--cache",
          "DIR",
          "Keep in this folder what came of each plan, and take from it what came of plans that are"
              + " the same, judged and told in the same way. Nothing but the time changes.");

  private final OptionSpec size =
      Options.number(
          WholeNumber.FROM_ONE,
          "--cache-mib",
          "512",
          "Keep at most so much there, in MiB (${DEFAULT-VALUE}); the oldest that this run had no use for go.");

  void addTo(CommandSpec spec) {
    spec.addOption(folder).addOption(size);
  }

  /** What is wrong with how they are given, if something is. */
  Optional<String> misuse() {
    return Optional.ofNullable(folder.<String>getValue())
        .filter(String::isBlank)
        .map(blank -> "--cache takes the name of a folder");
  }

  /** The cache that is asked for, if one is. */
  Optional<ResultCache> chosen(Surroundings here) {
    return Optional.ofNullable(folder.<String>getValue())
        .map(
            name ->
                new ResultCache(
                    here.resolve(name),
                    here.environment().getOrDefault(SECRET, ""),
                    size.<Integer>getValue() * (1L << 20)));
  }
}
