package strikeoff.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options that say by which policy and rules plans are judged. */
final class StudioOptions {

  @Option(
      names = "--policy",
      paramLabel = "FILE",
      description =
          "The studio's policy, for all plans. Without it, each studio.yaml in a plan's folder and"
              + " the folders above it applies, but own rules that it names aren't run.")
  private Optional<String> policy = Optional.empty();

  @Option(
      names = "--rules",
      paramLabel = "DIR",
      description =
          "A folder of own rules (.dslr, .drl). They are code that you trust: none is run that"
              + " neither this nor --policy names.")
  private Optional<String> rules = Optional.empty();

  @Option(
      names = "--rules-cache",
      paramLabel = "DIR",
      description =
          "Where compiled own rules are kept; by default in the user's cache folder. Safe to"
              + " delete.")
  private Optional<String> cache = Optional.empty();

  @Option(
      names = "--rules-seconds",
      paramLabel = "N",
      defaultValue = "10",
      description = "End own rules that take longer than this on a plan (${DEFAULT-VALUE}).")
  private double seconds = 10;

  Optional<String> policy() {
    return policy;
  }

  Optional<String> rules() {
    return rules;
  }

  double seconds() {
    // What is no number is no time to wait for ever.
    return seconds > 0.1 ? seconds : 0.1;
  }

  /** The folder for compiled rules: as given, else where the user keeps what can be made again. */
  Optional<Path> cache(Surroundings here) {
    if (cache.isPresent()) {
      return cache.map(here::resolve);
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
