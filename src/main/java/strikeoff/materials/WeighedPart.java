package strikeoff.materials;

import java.util.Optional;
import strikeoff.plan.Ingredient;
import strikeoff.policy.Substance;
import strikeoff.units.Quantity;
import strikeoff.units.Range;
import strikeoff.units.Volume;

/**
 * One line to weigh by.
 *
 * @param name in the words of whoever wrote the recipe
 * @param grams to weigh; a range if the recipe gives a volume
 * @param millilitres to measure; empty for what has no known density
 * @param measured true if the recipe gives a volume
 */
public record WeighedPart(
    String name, Substance substance, Range grams, Optional<Range> millilitres, boolean measured) {

  static WeighedPart of(Ingredient line, Substance substance, double times) {
    Quantity amount = line.amount();
    return new WeighedPart(
        line.named(),
        substance,
        substance.grams(amount).times(times),
        substance.millilitres(amount).map(ml -> ml.times(times)),
        amount instanceof Volume);
  }
}
