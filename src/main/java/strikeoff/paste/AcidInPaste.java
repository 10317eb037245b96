package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Cloth;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Measures;

/**
 * Acid that is weighed into a paste.
 *
 * @param dye true if it is a paste of reactive dye, false for paint
 * @param cellulose true if there is cellulose in the cloth
 * @param acid what it is
 * @param grams how much of it
 * @param soda soda ash that it uses up
 * @param edits that take water in its place
 * @param path of that line of the recipe
 */
public record AcidInPaste(
    String paste,
    boolean dye,
    boolean cellulose,
    String acid,
    Mass grams,
    Mass soda,
    List<List<Edit>> edits,
    PlanPath path)
    implements Evidence {

  public AcidInPaste {
    edits = List.copyOf(edits);
  }

  /** Of the first acid of the recipe; empty without one. */
  static Optional<AcidInPaste> of(Paste paste, Cloth cloth, Policy policy, Measures units) {
    return paste.recipe().stream()
        .filter(part -> policy.substance(part.substance()).role() == Substance.Role.ACID)
        .findFirst()
        .map(part -> of(paste, part, cloth, policy, units));
  }

  private static AcidInPaste of(
      Paste paste, Ingredient part, Cloth cloth, Policy policy, Measures units) {
    Recipe recipe = new Recipe(paste, policy);
    return new AcidInPaste(
        paste.name(),
        paste.medium() == Medium.DYE,
        policy.anyCellulose(cloth.fibres().keySet()),
        part.named(),
        new Mass(recipe.grams(Substance.Role.ACID).best()),
        new Mass(recipe.usedUpByAcid().best()),
        WaterInstead.of(recipe, Substance.Role.ACID, units),
        part.path());
  }
}
