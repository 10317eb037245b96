package strikeoff.plan.yaml;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.Ingredient;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.policy.UsualRecipe;
import strikeoff.yaml.Expected;
import strikeoff.yaml.Fields;

/** Reads the usual recipes of a studio's policy file, each written as a plan writes one. */
public final class UsualRecipes {

  private UsualRecipes() {}

  /**
   * Reads what stands under {@code recipes}, reporting every mistake.
   *
   * @param file its name
   */
  public static Map<UsualRecipe.For, UsualRecipe> read(Fields root, Policy policy, String file) {
    Map<UsualRecipe.For, UsualRecipe> recipes = new EnumMap<>(UsualRecipe.For.class);
    root.under("recipes", "the usual recipes")
        .ifPresent(
            f -> {
              for (UsualRecipe.For use : UsualRecipe.For.values()) {
                recipe(f, use, policy, file).ifPresent(recipe -> recipes.put(use, recipe));
              }
              f.done();
            });
    return recipes;
  }

  private static Optional<UsualRecipe> recipe(
      Fields f, UsualRecipe.For use, Policy policy, String file) {
    Expected<List<Ingredient>> form = Recipes.recipe(policy);
    Optional<List<Ingredient>> parts = f.optional(use.text(), form);
    if (parts.isPresent() && f.sound(use.text())) {
      boolean alkali = Recipes.holds(parts.get(), Substance.Role.ALKALI, policy);
      if (use == UsualRecipe.For.DYE && alkali) {
        f.wrong(
            use.text(),
            "this recipe holds an alkali, so it is one of “"
                + UsualRecipe.For.DYE_WITH_ALKALI.text()
                + "”");
      } else if (use == UsualRecipe.For.DYE_WITH_ALKALI && !alkali) {
        f.wrong(use.text(), "this recipe holds no alkali, so it is one of “dye”");
      }
    }
    return parts.map(
        lines ->
            new UsualRecipe(
                lines, file + ", line " + f.item(use.text()).orElseThrow().key().line()));
  }
}
