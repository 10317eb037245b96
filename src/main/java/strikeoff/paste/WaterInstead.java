package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.plan.Ingredient;
import strikeoff.plan.PlanPath;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Volume;

/** Edits that leave out what doesn't belong into a recipe and take as much water in its place. */
final class WaterInstead {

  private WaterInstead() {}

  /** One way, or none for a recipe without water. */
  static List<List<Edit>> of(Recipe recipe, Substance.Role role) {
    Optional<Ingredient> water = part(recipe, Substance.Role.WATER);
    if (water.isEmpty()) {
      return List.of();
    }
    double grams = recipe.grams(role).best();
    String more =
        water.get().amount() instanceof Volume volume
            ? new Volume(volume.litres() + grams / 1000).text()
            : new Mass(((Mass) water.get().amount()).grams() + grams).text();
    List<Edit> edits = new ArrayList<>();
    edits.add(new Edit.Write(water.get().path(), more));
    parts(recipe, role).forEach(path -> edits.add(new Edit.Remove(path)));
    return List.of(edits);
  }

  private static Optional<Ingredient> part(Recipe recipe, Substance.Role role) {
    return recipe.paste().recipe().stream()
        .filter(p -> recipe.policy().substance(p.substance()).role() == role)
        .findFirst();
  }

  private static List<PlanPath> parts(Recipe recipe, Substance.Role role) {
    return recipe.paste().recipe().stream()
        .filter(p -> recipe.policy().substance(p.substance()).role() == role)
        .map(Ingredient::path)
        .toList();
  }
}
