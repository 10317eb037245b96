package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.paste.ForRecipe;
import strikeoff.paste.HeldAlkali;
import strikeoff.paste.PasteDose;
import strikeoff.paste.Recipe;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Measures;

/**
 * The alkali in a dye paste that is batched or steamed with no other.
 *
 * @param how batch or steam
 * @param steam true for steam
 * @param soda true for soda ash and its like, false for baking soda
 * @param cellulose true if the cloth holds cotton, linen or the like
 * @param pure false if it holds a soda with water in its crystals, or silicate
 * @param dose of the paste
 * @param perKilogramMeant true if the figure in this pot is one that recipes give for a kilogram
 * @param here what this recipe takes of it; empty if it holds nothing else
 * @param related the fix step
 * @param path of the recipe
 */
public record AlkaliDose(
    int step,
    String how,
    boolean steam,
    boolean soda,
    boolean cellulose,
    boolean pure,
    PasteDose dose,
    boolean perKilogramMeant,
    Optional<ForRecipe> here,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public AlkaliDose {
    related = List.copyOf(related);
  }

  static List<AlkaliDose> all(FixingRun work) {
    List<AlkaliDose> all = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix
          && !fix.wets()
          && work.isTheLast(fix)
          && !work.soakedBefore(fix)) {
        for (Paste paste : FixingRun.pastes(work.before(fix, Medium.DYE))) {
          PasteDose.of(paste, work.plan().cloth(), work.policy())
              .filter(dose -> dose.alkaliGrams().high() > 0)
              .filter(dose -> all.stream().noneMatch(a -> a.path().equals(dose.path())))
              .ifPresent(
                  dose ->
                      all.add(
                          new AlkaliDose(
                              fix.number(),
                              fix.how().text(),
                              fix.how() == DyeFixing.STEAM,
                              new Recipe(paste, work.policy()).alkali() == HeldAlkali.SODA,
                              work.policy().anyCellulose(work.plan().cloth().fibres().keySet()),
                              pure(paste, work.policy()),
                              dose,
                              perKilogramMeant(paste, work.policy()),
                              here(paste, dose, work.policy()),
                              List.of(new Evidence.Related(Tie.FIXED_HERE, fix.path())),
                              dose.path())));
        }
      }
    }
    return all;
  }

  private static boolean pure(Paste paste, Policy policy) {
    return paste.recipe().stream()
        .map(part -> policy.substance(part.substance()))
        .filter(s -> s.role() == Substance.Role.ALKALI)
        .allMatch(s -> s.bicarbonate() || s.alkaliFactor().orElse(0.0) == 1);
  }

  private static boolean perKilogramMeant(Paste paste, Policy policy) {
    double inPot = new Recipe(paste, policy).grams(Substance.Role.ALKALI).best();
    return inPot >= policy.fixing().alkaliRecipeLeast().value()
        && inPot <= policy.fixing().alkaliRecipeMost().value();
  }

  /** As recipes weigh it, and enough for the dye that there is. */
  private static Optional<ForRecipe> here(Paste paste, PasteDose dose, Policy policy) {
    double forDye = policy.fixing().alkaliLowPerDye().value() * dose.dyeGrams().high();
    return ForRecipe.of(
        new Recipe(paste, policy),
        s -> s.role() == Substance.Role.ALKALI,
        "baking soda",
        Math.max(policy.fixing().alkaliRecipeLeast().value(), forDye),
        Math.max(policy.fixing().alkaliRecipeMost().value(), forDye));
  }

  /** The same as edits, where the recipe's alkali is weighed as it counts. */
  public List<List<Edit>> edits(Measures units) {
    return pure ? here.map(h -> h.edits(units)).orElseGet(List::of) : List.of();
  }

  public boolean perDyeKnown() {
    return dose.hasDye();
  }
}
