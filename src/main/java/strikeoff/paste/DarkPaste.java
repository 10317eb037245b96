package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import strikeoff.colour.Lab;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Paste;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Measures;
import strikeoff.units.Ratio;

/**
 * A dye paste of a dark colour with the dye powder of its recipe.
 *
 * @param lightness L* of its colour
 * @param dose what a kilogram of it holds
 * @param here dye powder that this recipe takes for a dark shade; empty if it holds nothing else
 * @param path of the recipe
 */
public record DarkPaste(
    String paste, Ratio lightness, PasteDose dose, Optional<ForRecipe> here, PlanPath path)
    implements Evidence {

  /** Of a paste whose recipe holds dye. */
  static Optional<DarkPaste> of(Paste paste, PasteDose dose, Policy policy) {
    return Optional.of(dose)
        .filter(PasteDose::hasDye)
        .map(
            d ->
                new DarkPaste(
                    paste.name(),
                    Ratio.toTenth(Lab.of(paste.colour()).lightness()),
                    d,
                    ForRecipe.of(
                        new Recipe(paste, policy),
                        s -> s.role() == Substance.Role.DYE,
                        "dye",
                        policy.paste().darkDye().value(),
                        policy.paste().blackDye().value()),
                    paste.path().key("recipe")));
  }

  /** What writes the least of it into the recipe. */
  public List<List<Edit>> edits(Measures units) {
    return here.map(h -> h.edits(units)).orElseGet(List::of);
  }
}
