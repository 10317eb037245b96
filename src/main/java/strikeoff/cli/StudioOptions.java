package strikeoff.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Options that say by which policy and rules plans are judged. */
final class StudioOptions {

  private final OptionSpec policy =
      Options.word(
          "--policy",
          "FILE",
          "The studio's policy, for all plans. Without it, each studio.yaml in a plan's folder and"
              + " the folders above it applies, but own rules that it names aren't run.");

  private final OptionSpec rules =
      Options.word(
          "--rules",
          "DIR",
          "A folder of own rules (.dslr, .drl). They are code that you trust: none is run that"
              + " neither this nor --policy names.");

  private final OptionSpec cache =
      Options.word(
          "--rules-cache",
          "DIR",
          "Where compiled own rules are kept; by default in the user's cache folder. Safe to"
              + " delete.");

  private final OptionSpec seconds =
      Options.words(
              "End own rules that take longer than this on a plan (${DEFAULT-VALUE}).",
              "N",
              "--rules-seconds")
          .type(double.class)
          .converters(new Seconds())
          .defaultValue("10")
          .build();

  void addTo(CommandSpec spec) {
    spec.addOption(policy).addOption(rules).addOption(cache).addOption(seconds);
  }

  Optional<String> policy() {
    return Optional.ofNullable(policy.getValue());
  }

  Optional<String> rules() {
    return Optional.ofNullable(rules.getValue());
  }

  double seconds() {
    return seconds.getValue();
  }

  /** The folder for compiled rules: as given, else where the user keeps what can be made again. */
  Optional<Path> cache(Surroundings here) {
    if (cache.getValue() != null) {
      return Optional.of(here.resolve(cache.getValue()));
    }
    String given = here.environment().getOrDefault("XDG_CACHE_HOME", "");
    String home = here.environment().getOrDefault("HOME", "");
    // The standard has paths that aren't absolute ignored.
    if (!given.isEmpty() && Path.of(given).isAbsolute()) {
      return Optional.of(Path.of(given, "strikeoff", "rules"));
    }
    return home.isEmpty()
        ? Optional.empty()
        : Optional.of(Path.of(home, ".cache", "strikeoff", "rules"));
  }
}
