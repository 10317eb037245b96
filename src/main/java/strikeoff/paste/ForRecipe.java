package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.plan.Ingredient;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Range;

/**
 * What a plan's own recipe takes of a part, where recipes say how much a kilogram of paste holds.
 * The other parts stay as they are, so the paste grows by what is added.
 *
 * @param least grams of the part with which a kilogram holds the least
 * @param most the same for the most
 * @param at where it is written into the recipe; empty if several parts share the work
 */
public record ForRecipe(Mass least, Mass most, Optional<PlanPath> at) {

  /**
   * @param part which substances of the recipe count
   * @param added the substance to write where the recipe has none of them
   * @param least grams in a kilogram of paste
   * @param most the same
   * @return empty if the recipe holds nothing else
   */
  public static Optional<ForRecipe> of(
      Recipe recipe, Predicate<Substance> part, String added, double least, double most) {
    List<Ingredient> parts =
        recipe.paste().recipe().stream()
            .filter(i -> part.test(recipe.policy().substance(i.substance())))
            .toList();
    double now = parts.stream().map(recipe::grams).mapToDouble(Range::best).sum();
    double rest = recipe.sumGrams().map(Range::best).orElse(0.0) - now;
    if (!(rest > 0) || !(most < 1000)) {
      return Optional.empty();
    }
    Mass from = new Mass(rest * least / (1000 - least));
    Mass to = new Mass(Math.max(from.grams(), rest * most / (1000 - most)));
    return Optional.of(
        new ForRecipe(
            from,
            to,
            switch (parts.size()) {
              case 0 -> Optional.of(recipe.paste().path().key("recipe").key(added));
              case 1 -> Optional.of(parts.get(0).path());
              default -> Optional.empty();
            }));
  }

  /** What writes the least into the recipe; none if several parts share the work. */
  public List<List<Edit>> edits(Measures units) {
    return at.map(path -> List.<Edit>of(new Edit.Write(path, least.roundedUp(units)))).stream()
        .toList();
  }
}
