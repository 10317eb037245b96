package strikeoff.cli;

import picocli.CommandLine.Option;

/** Options that every command has. */
final class Usual {

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      defaultValue = "auto",
      description =
          "Colour the output: auto, always or never. Auto colours on a terminal unless NO_COLOR"
              + " is set.")
  private Colour colour;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  private boolean help;

  /** When to colour. */
  Colour colour() {
    return colour;
  }

  Ink ink(Surroundings here) {
    return colour.ink(here);
  }
}
