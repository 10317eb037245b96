package strikeoff.yaml;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import strikeoff.document.Position;

/**
 * Finds the slip of the pen behind what a parser complains of, which is often a line further up,
 * and mends it, so that the text can be read on to the next one.
 */
final class Slips {

  /**
   * A slip in somebody's words.
   *
   * @param at in the written text
   * @param message empty if whoever reads the text tells it
   */
  record Slip(Position at, String message) {}

  /** In the order in which they are looked for: the most telling signs first. */
  private static final List<BiFunction<Fault, Mended, Optional<Slip>>> KINDS =
      List.of(
          SignSlips::find,
          QuoteSlips::find,
          BracketSlips::find,
          ColonSlips::find,
          IndentSlips::find);

  private Slips() {}

  /** The slip, mended; empty if nothing that people usually do explains the fault. */
  static Optional<Slip> mend(Fault fault, Mended text) {
    return KINDS.stream().flatMap(kind -> kind.apply(fault, text).stream()).findFirst();
  }
}
