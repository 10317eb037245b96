package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import strikeoff.chemistry.Carbonate;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Cloth;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Measures;
import strikeoff.units.Range;

/**
 * What a kilogram of a dye paste holds by its recipe, to a tenth of a gram. Spoons and cups make
 * ranges.
 *
 * @param dyeGrams dye powder in a kilogram
 * @param ureaGrams the same of urea
 * @param alkaliGrams the same of alkali: soda as soda ash, and baking soda as it is weighed, less
 *     what acid in the recipe uses up
 * @param alkaliPerDye g of alkali for each g of dye powder; zero without dye
 * @param urea what this recipe takes of urea on this cloth; empty if it holds nothing else
 * @param dye the same of dye powder, from a pale to a strong print
 * @param usual what recipes put into a kilogram for this cloth
 * @param path of the recipe
 */
public record PasteDose(
    String paste,
    Range dyeGrams,
    Range ureaGrams,
    Range alkaliGrams,
    Range alkaliPerDye,
    Optional<ForRecipe> urea,
    Optional<ForRecipe> dye,
    UsualUrea usual,
    PlanPath path)
    implements Evidence {

  /** A mole of soda ash takes up two acid groups, one of baking soda a single one. */
  private static final double BAKING_SODA_FOR_SODA =
      2 * Carbonate.BICARBONATE / Carbonate.ANHYDROUS;

  /** Empty for paint, and for a paste without a recipe. */
  public static Optional<PasteDose> of(Paste paste, Cloth cloth, Policy policy) {
    Recipe recipe = new Recipe(paste, policy);
    Optional<Range> whole = recipe.sumGrams();
    if (paste.medium() != Medium.DYE || whole.isEmpty() || !(whole.get().low() > 0)) {
      return Optional.empty();
    }
    Range dye = recipe.grams(Substance.Role.DYE);
    Range alkali = alkali(recipe, policy);
    return Optional.of(
        new PasteDose(
            paste.name(),
            perKilogram(dye, whole.get()),
            perKilogram(recipe.grams(Substance.Role.UREA), whole.get()),
            perKilogram(alkali, whole.get()),
            dye.low() > 0
                ? new Range(
                    alkali.low() / dye.high(),
                    alkali.best() / dye.best(),
                    alkali.high() / dye.low())
                : Range.exactly(0),
            UsualUrea.of(cloth, policy).in(recipe),
            ForRecipe.of(
                recipe,
                s -> s.role() == Substance.Role.DYE,
                "dye",
                policy.paste().leastDye().value(),
                policy.paste().strongDye().value()),
            UsualUrea.of(cloth, policy),
            paste.path().key("recipe")));
  }

  private static Range alkali(Recipe recipe, Policy policy) {
    Range alkali = Range.exactly(0);
    for (Ingredient part : recipe.paste().recipe()) {
      Substance substance = policy.substance(part.substance());
      if (substance.role() == Substance.Role.ALKALI) {
        alkali = alkali.plus(recipe.grams(part).times(substance.alkaliFactor().orElse(1.0)));
      }
    }
    return left(alkali, recipe);
  }

  /** What acid leaves of it: a gram of soda ash does what 1.585 g of baking soda do. */
  private static Range left(Range alkali, Recipe recipe) {
    double like = recipe.alkali() == HeldAlkali.BICARBONATE ? BAKING_SODA_FOR_SODA : 1;
    Range used = recipe.usedUpByAcid().times(like);
    return new Range(
        Math.max(0, alkali.low() - used.high()),
        Math.max(0, alkali.best() - used.best()),
        Math.max(0, alkali.high() - used.low()));
  }

  /** More of a part makes the whole heavier too, so its own range is not counted twice. */
  private static Range perKilogram(Range part, Range whole) {
    return new Range(
            kilo(part.low(), whole.high() - part.high()),
            kilo(part.best(), whole.best() - part.best()),
            kilo(part.high(), whole.low() - part.low()))
        .told(1);
  }

  private static double kilo(double part, double rest) {
    return part + rest > 0 ? 1000 * part / (part + rest) : 0;
  }

  public List<List<Edit>> ureaEdits(Measures units) {
    return urea.map(u -> u.edits(units)).orElseGet(List::of);
  }

  public boolean hasDye() {
    return dyeGrams.high() > 0;
  }
}
