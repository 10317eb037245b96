package strikeoff.paste;

import java.util.Comparator;
import java.util.Optional;
import strikeoff.plan.Cloth;
import strikeoff.policy.Fibre;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;

/**
 * The urea that recipes put into a kilogram of dye paste for a cloth: by the fibre of it that asks
 * for most.
 */
public record UsualUrea(double least, double most, Fibre fibre) {

  public static UsualUrea of(Cloth cloth, Policy policy) {
    Fibre thirstiest =
        cloth.fibres().keySet().stream()
            .map(policy::fibre)
            .filter(f -> policy.counts(f, cloth.fibres().get(f.name())))
            .max(Comparator.comparing(Fibre::ureaFactor))
            .orElseGet(() -> policy.fibre(cloth.fibres().keySet().iterator().next()));
    double factor = thirstiest.ureaFactor().value();
    return new UsualUrea(
        policy.paste().ureaLeast().value() * factor,
        policy.paste().ureaMost().value() * factor,
        thirstiest);
  }

  /** What a recipe takes of it; empty if it holds nothing else. */
  public Optional<ForRecipe> in(Recipe recipe) {
    return ForRecipe.of(recipe, s -> s.role() == Substance.Role.UREA, "urea", least, most);
  }
}
