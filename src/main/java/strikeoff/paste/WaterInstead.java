package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.document.Edit;
import strikeoff.plan.Ingredient;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Volume;

/** Edits that leave out what doesn't belong into a recipe and take as much water in its place. */
final class WaterInstead {

  private WaterInstead() {}

  /** One way, or none for a recipe without water. */
  static List<List<Edit>> of(Recipe recipe, Substance.Role role, Measures units) {
    Optional<Ingredient> water = parts(recipe, Substance.Role.WATER).findFirst();
    if (water.isEmpty()) {
      return List.of();
    }
    double grams = recipe.grams(role).best();
    String more =
        water.get().amount() instanceof Volume volume
            ? new Volume(volume.litres() + grams / 1000).text(units)
            : new Mass(((Mass) water.get().amount()).grams() + grams).text(units);
    List<Edit> edits = new ArrayList<>();
    edits.add(new Edit.Write(water.get().path(), more));
    parts(recipe, role).forEach(part -> edits.add(new Edit.Remove(part.path())));
    return List.of(edits);
  }

  private static Stream<Ingredient> parts(Recipe recipe, Substance.Role role) {
    return recipe.paste().recipe().stream()
        .filter(p -> recipe.policy().substance(p.substance()).role() == role);
  }
}
