package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Range;

/** Writes recipes out for the amounts that are mixed. */
final class Cards {

  private Cards() {}

  /** A card for each printed paste that has a recipe. */
  static List<MixingCard> of(PrintPlan plan, List<PasteUse> uses, Policy policy) {
    List<MixingCard> cards = new ArrayList<>();
    for (PasteUse use : uses) {
      Paste paste = plan.pastes().get(use.paste());
      Recipe recipe = new Recipe(paste, policy);
      Optional<Range> sum = recipe.sumGrams();
      Optional<Range> batch = recipe.batchGrams();
      if (sum.isPresent() && sum.get().best() > 0 && batch.isPresent()) {
        double factor = batch.get().best() / sum.get().best();
        cards.add(
            new MixingCard(
                paste.name(),
                new Mass(batch.get().best()),
                Math.max(1, use.batches()),
                use.needGrams(),
                use.toMix(),
                factor,
                lines(paste, factor, policy)));
      }
    }
    return cards;
  }

  private static List<MixingCard.Line> lines(Paste paste, double factor, Policy policy) {
    List<MixingCard.Line> lines = new ArrayList<>();
    for (Ingredient part : paste.recipe()) {
      Substance substance = policy.substance(part.substance());
      Optional<Range> millilitres =
          substance.millilitres(part.amount()).map(ml -> ml.times(factor));
      lines.add(
          new MixingCard.Line(
              part.named(), substance.grams(part.amount()).times(factor), millilitres));
    }
    return lines;
  }
}
