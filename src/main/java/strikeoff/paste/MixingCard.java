package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import strikeoff.units.Mass;
import strikeoff.units.Range;

/**
 * A recipe scaled to the amount that the run needs, to pin up where it is mixed.
 *
 * @param paste its name
 * @param amount what the card makes
 * @param factor how many times the plan's recipe
 * @param lines parts in the recipe's order
 */
public record MixingCard(String paste, Mass amount, double factor, List<Line> lines) {

  public MixingCard {
    lines = List.copyOf(lines);
  }

  /**
   * One part.
   *
   * @param substance its name
   * @param grams to weigh; a range if the recipe gives a volume
   * @param millilitres to measure; empty for what has no known density
   * @param spoons the same in kitchen measures; empty likewise
   */
  public record Line(
      String substance, Range grams, Optional<Range> millilitres, Optional<String> spoons) {}
}
