package strikeoff.bath;

import java.util.List;
import strikeoff.plan.Ingredient;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Range;

/**
 * A bath as it is mixed.
 *
 * @param sodaGrams all its sodas as the mass of anhydrous soda ash that gives the same alkali;
 *     without baking soda
 * @param bicarbonateGrams baking soda, far milder
 * @param litres water poured in; zero if the bath lists none
 */
record Liquor(Range sodaGrams, Range bicarbonateGrams, Range litres) {

  private static final Range NONE = Range.exactly(0);

  static Liquor of(List<Ingredient> bath, Policy policy) {
    Range soda = NONE;
    Range bicarbonate = NONE;
    Range litres = NONE;
    for (Ingredient part : bath) {
      Substance substance = policy.substance(part.substance());
      Range grams = substance.grams(part.amount());
      if (substance.role() == Substance.Role.WATER) {
        litres = litres.plus(substance.millilitres(part.amount()).orElse(grams).times(1e-3));
      } else if (isBicarbonate(substance)) {
        bicarbonate = bicarbonate.plus(grams);
      } else {
        soda = soda.plus(grams.times(substance.alkaliFactor().orElse(0.0)));
      }
    }
    return new Liquor(soda, bicarbonate, litres);
  }

  /** Baking soda is an alkali of its own: cold, no amount of it makes soda ash. */
  static boolean isBicarbonate(Substance substance) {
    return substance.name().contains("bicarbonate") || substance.name().equals("baking soda");
  }

  boolean hasWater() {
    return litres.low() > 0;
  }

  boolean hasAlkali() {
    return sodaGrams.high() > 0 || bicarbonateGrams.high() > 0;
  }

  /** Anhydrous soda for each litre of water. */
  Range sodaGramsPerLitre() {
    return per(sodaGrams);
  }

  Range bicarbonateGramsPerLitre() {
    return per(bicarbonateGrams);
  }

  private Range per(Range grams) {
    return hasWater()
        ? new Range(
            grams.low() / litres.high(), grams.best() / litres.best(), grams.high() / litres.low())
        : NONE;
  }
}
