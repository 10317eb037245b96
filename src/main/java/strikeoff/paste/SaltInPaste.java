package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Range;

/**
 * Salt that is weighed into a dye paste.
 *
 * @param salt what it is
 * @param grams how much of it
 * @param perKilogram g in a kilogram of paste, by its recipe
 * @param edits that take water in its place
 * @param path of that line of the recipe
 */
public record SaltInPaste(
    String paste, String salt, Mass grams, Range perKilogram, List<List<Edit>> edits, PlanPath path)
    implements Evidence {

  public SaltInPaste {
    edits = List.copyOf(edits);
  }

  /** Of the first salt of the recipe; empty for paint, and for a paste without salt. */
  static Optional<SaltInPaste> of(Paste paste, Policy policy, Measures units) {
    Recipe recipe = new Recipe(paste, policy);
    Range salt = recipe.grams(Substance.Role.SALT);
    Range whole = recipe.sumGrams().orElse(salt);
    return paste.recipe().stream()
        .filter(part -> policy.substance(part.substance()).role() == Substance.Role.SALT)
        .findFirst()
        .filter(part -> paste.medium() == Medium.DYE && whole.low() > 0)
        .map(
            part ->
                new SaltInPaste(
                    paste.name(),
                    part.named(),
                    new Mass(salt.best()),
                    salt.times(1000 / whole.best()),
                    WaterInstead.of(recipe, Substance.Role.SALT, units),
                    part.path()));
  }
}
