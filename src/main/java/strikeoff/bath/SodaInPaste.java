package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.paste.Recipe;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Range;

/**
 * A printed dye paste whose recipe holds soda, on cloth with fibres that strong alkali harms.
 *
 * @param proteinFibres those fibres: silk, wool
 * @param sodaGramsPerLitre its sodas, as anhydrous soda ash, for each litre of the recipe's paste;
 *     without baking soda
 * @param path of the recipe
 */
public record SodaInPaste(
    String paste, List<String> proteinFibres, Range sodaGramsPerLitre, PlanPath path)
    implements Evidence {

  public SodaInPaste {
    proteinFibres = List.copyOf(proteinFibres);
  }

  static List<SodaInPaste> all(FixingRun work) {
    List<String> protein = work.proteinFibres();
    List<SodaInPaste> all = new ArrayList<>();
    if (!protein.isEmpty()) {
      for (Paste paste : FixingRun.pastes(work.impressions(Medium.DYE, i -> true))) {
        Range strength = gramsPerLitre(paste, work.policy());
        if (strength.high() > 0) {
          all.add(new SodaInPaste(paste.name(), protein, strength, paste.path().key("recipe")));
        }
      }
    }
    return all;
  }

  private static Range gramsPerLitre(Paste paste, Policy policy) {
    Recipe recipe = new Recipe(paste, policy);
    Range soda = Range.exactly(0);
    for (Ingredient part : paste.recipe()) {
      Substance substance = policy.substance(part.substance());
      if (substance.role() == Substance.Role.ALKALI) {
        soda = soda.plus(recipe.grams(part).times(substance.alkaliFactor().orElse(0.0)));
      }
    }
    Range whole = recipe.sumGrams().orElse(Range.exactly(0));
    if (whole.low() <= 0) {
      return Range.exactly(0);
    }
    double density = policy.screens().densityDyePaste().gramsPerLitre();
    return new Range(
        soda.low() / whole.high() * density,
        soda.best() / whole.best() * density,
        soda.high() / whole.low() * density);
  }
}
