package strikeoff.cli.commands;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import strikeoff.cli.text.Surroundings;
import strikeoff.units.UnitChoice;

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

  private final OptionSpec units =
      Options.oneOf(
          UnitChoice.class,
          "--units",
          "WHOSE",
          "plan",
          "In whose units to tell lengths, masses, volumes and temperatures: plan, metric, us or"
              + " imperial (${DEFAULT-VALUE}). With plan each kind is told as most of the plan's own"
              + " are written. JSON's numbers are in metric units always.");

  /** Also for a command that tells figures of a plan. */
  void addWithUnitsTo(CommandSpec spec) {
    addTo(spec);
    spec.addOption(units);
  }

  UnitChoice units() {
    return units.getValue() == null ? UnitChoice.PLAN : units.getValue();
  }

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

  /**
   * The file with the key that seals compiled rules: in the user's own home, whatever else is said
   * of the cache, since who can write there can change the user's programs as well.
   */
  static Optional<Path> cacheKey(Surroundings here) {
    String home = here.environment().getOrDefault("HOME", "");
    return home.isEmpty() || !Path.of(home).isAbsolute()
        ? Optional.empty()
        : Optional.of(Path.of(home, ".cache", "strikeoff", "rules.key"));
  }

  /** The folder for compiled rules: as given, else where the user keeps what can be made again. */
  Optional<Path> cache(Surroundings here) {
    if (cache.getValue() != null) {
      return Optional.of(here.resolve(cache.getValue()));
    }
    try {
      return usualCache(here);
    } catch (InvalidPathException e) {
      // A home whose name this locale can't read: rules are compiled with each run.
      return Optional.empty();
    }
  }

  private static Optional<Path> usualCache(Surroundings here) {
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
