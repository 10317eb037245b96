package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Paste;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
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
    double grams = volume.litres() * density(paste, policy);
    double spread = policy.paste().filledByEye().fraction();
    return new Range(grams * (1 - spread), grams, grams * (1 + spread));
  }

  /** Mass of a litre of paste or paint, g/L. */
  static double density(Paste paste, Policy policy) {
    return policy.screens().density(paste.medium()).gramsPerLitre();
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

  /** Grams of soda ash that the acids of the recipe use up. */
  public Range usedUpByAcid() {
    Range used = Range.exactly(0);
    for (Ingredient part : paste.recipe()) {
      Substance substance = policy.substance(part.substance());
      if (substance.role() == Substance.Role.ACID) {
        used = used.plus(grams(part).times(substance.alkaliFactor().orElse(1.0)));
      }
    }
    return used;
  }

  /** True if the paste holds its alkali, by word or by recipe. */
  public boolean holdsAlkali() {
    return alkali() != HeldAlkali.NONE;
  }

  /**
   * Edits that leave the alkali to a bath: the word that it is in the paste goes, and water takes
   * the place of what the recipe holds of it. None if the paste holds none, or nothing can take its
   * place.
   */
  public List<Edit> withoutAlkali(Measures units) {
    List<Edit> edits = new ArrayList<>();
    if (paste.alkaliInPaste()) {
      edits.add(new Edit.Remove(paste.path().key("alkali")));
    }
    if (grams(Substance.Role.ALKALI).high() > 0) {
      List<List<Edit>> ways = WaterInstead.of(this, Substance.Role.ALKALI, units);
      if (ways.isEmpty()) {
        return List.of();
      }
      edits.addAll(ways.get(0));
    }
    return edits;
  }

  /** The alkalis in the plan's own words; empty if it names none. */
  public String alkaliNamed() {
    return Phrase.list(
        paste.recipe().stream()
            .filter(part -> policy.substance(part.substance()).role() == Substance.Role.ALKALI)
            .map(Ingredient::named)
            .toList());
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
    return named.stream().allMatch(Substance::bicarbonate)
        ? HeldAlkali.BICARBONATE
        : HeldAlkali.SODA;
  }
}
