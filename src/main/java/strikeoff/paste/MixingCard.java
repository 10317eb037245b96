package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import strikeoff.units.Mass;
import strikeoff.units.Range;

/**
 * A recipe for one batch as the plan mixes it, to pin up where it is mixed, and what the run needs
 * beside it. Whether the one suffices for the other is for rules to say.
 *
 * @param paste its name
 * @param amount what the card makes
 * @param batches how often the plan mixes that; one at least
 * @param needGrams what the run needs in all
 * @param enough a round amount that is enough for the run by the most careful estimate
 * @param factor how many times the plan's recipe
 * @param lines parts in the recipe's order
 */
public record MixingCard(
    String paste,
    Mass amount,
    int batches,
    Range needGrams,
    Mass enough,
    double factor,
    List<Line> lines) {

  public MixingCard {
    lines = List.copyOf(lines);
  }

  /**
   * One part.
   *
   * @param substance its name
   * @param grams to weigh; a range if the recipe gives a volume
   * @param millilitres to measure; empty for what has no known density
   */
  public record Line(String substance, Range grams, Optional<Range> millilitres) {}
}
