package strikeoff.cli.commands;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import strikeoff.cli.text.Colouring;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.Surroundings;

/** Options that every command has. */
final class Usual {

  private final OptionSpec colour =
      Options.oneOf(
          Colouring.class,
          "--color",
          "WHEN",
          "auto",
          "Colour the output: auto, always or never. Auto colours on a terminal unless NO_COLOR"
              + " is set.");

  void addTo(CommandSpec spec) {
    spec.addOption(colour).addOption(help());
  }

  /** Shows the help rather than run the command. */
  static OptionSpec help() {
    return OptionSpec.builder("-h", "--help")
        .type(boolean.class)
        .converters(new YesOrNo())
        .usageHelp(true)
        .description("Show this help and exit.")
        .build();
  }

  /** When to colour. */
  Colouring colour() {
    return colour.getValue();
  }

  Ink ink(Surroundings here) {
    return colour().ink(here);
  }
}
