package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Volume;

/** What a paste is mixed from, in grams. */
public record Recipe(Paste paste, Policy policy) {

  /** The masses of all parts together; empty for a paste without a recipe. */
  public Optional<Range> sumGrams() {
    return paste.recipe().stream().map(this::grams).reduce(Range::plus);
  }

  /** What one batch weighs: the stated amount, or else the recipe's sum. */
  public Optional<Range> batchGrams() {
    return amountGrams().or(this::sumGrams);
  }

  /**
   * The stated amount: as weighed, or from its volume through the density of such paste, as closely
   * as a cup is filled by eye.
   */
  public Optional<Range> amountGrams() {
    return paste
        .amount()
        .map(
            amount ->
                amount instanceof Volume volume
                    ? filled(volume)
                    : Range.exactly(((Mass) amount).grams()));
  }

  private Range filled(Volume volume) {
    String density =
        paste.medium() == Medium.DYE ? "screens/density-dye-paste" : "screens/density-paint";
    double grams = volume.litres() * policy.limit(density).amount();
    double spread = policy.limit("paste/filled-by-eye").amount();
    return new Range(grams * (1 - spread), grams, grams * (1 + spread));
  }

  public Range grams(Ingredient part) {
    return policy.substance(part.substance()).grams(part.amount());
  }

  public Range grams(Substance.Role role) {
    return paste.recipe().stream()
        .filter(part -> policy.substance(part.substance()).role() == role)
        .map(this::grams)
        .reduce(Range.exactly(0), Range::plus);
  }

  /** True if the paste holds its alkali, by word or by recipe. */
  public boolean holdsAlkali() {
    return alkali() != HeldAlkali.NONE;
  }

  /** What the recipe names; without one, the word that there is alkali means soda. */
  public HeldAlkali alkali() {
    List<Substance> named =
        paste.recipe().stream()
            .map(part -> policy.substance(part.substance()))
            .filter(s -> s.role() == Substance.Role.ALKALI)
            .toList();
    if (named.isEmpty()) {
      return paste.alkaliInPaste() ? HeldAlkali.SODA : HeldAlkali.NONE;
    }
    return named.stream().allMatch(s -> s.alkaliFactor().isEmpty())
        ? HeldAlkali.BICARBONATE
        : HeldAlkali.SODA;
  }
}
