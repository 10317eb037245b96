package strikeoff.cli.commands;

import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
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
          "A folder of own rules, in sentences (.dslr). None is run that neither this nor --policy"
              + " names.");

  private final OptionSpec seconds =
      Options.words(
              "End an own rule that takes longer than this on a plan, and all of them after three times"
                  + " as long (${DEFAULT-VALUE}).",
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
    spec.addOption(policy).addOption(rules).addOption(seconds);
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
}
