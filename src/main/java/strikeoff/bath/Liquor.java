package strikeoff.bath;

import java.util.List;
import java.util.Optional;
import strikeoff.chemistry.SodaSolution;
import strikeoff.plan.Ingredient;
import strikeoff.policy.Policy;
import strikeoff.policy.Substance;
import strikeoff.units.Range;

/**
 * A bath as it is mixed.
 *
 * @param sodaGrams all its sodas as the mass of anhydrous soda ash that gives the same alkali;
 *     without baking soda
 * @param bicarbonateGrams baking soda, far milder
 * @param silicateLitres silicate liquid, a stronger alkali that needs no water
 * @param saltGrams salt of any kind
 * @param sulphateGrams the part of it that is Glauber's salt
 * @param litres liquid poured in, silicate included; zero if the bath lists none
 */
public record Liquor(
    Range sodaGrams,
    Range bicarbonateGrams,
    Range silicateLitres,
    Range saltGrams,
    Range sulphateGrams,
    Range litres) {

  private static final Range NONE = Range.exactly(0);

  static Liquor of(List<Ingredient> bath, Policy policy) {
    Range soda = NONE;
    Range bicarbonate = NONE;
    Range silicate = NONE;
    Range salt = NONE;
    Range sulphate = NONE;
    Range litres = NONE;
    for (Ingredient part : bath) {
      Substance substance = policy.substance(part.substance());
      Range grams = substance.grams(part.amount());
      if (substance.role() == Substance.Role.WATER) {
        litres = litres.plus(substance.millilitres(part.amount()).orElse(grams).times(1e-3));
      } else if (substance.silicate()) {
        Range poured = substance.millilitres(part.amount()).orElse(grams).times(1e-3);
        silicate = silicate.plus(poured);
        litres = litres.plus(poured);
      } else if (substance.role() == Substance.Role.SALT) {
        salt = salt.plus(grams);
        sulphate = substance.sulphate() ? sulphate.plus(grams) : sulphate;
      } else if (substance.bicarbonate()) {
        bicarbonate = bicarbonate.plus(grams);
      } else if (substance.role() == Substance.Role.ALKALI) {
        soda = soda.plus(grams.times(substance.alkaliFactor().orElse(0.0)));
      }
    }
    return new Liquor(soda, bicarbonate, silicate, salt, sulphate, litres);
  }

  boolean hasWater() {
    return litres.low() > 0;
  }

  boolean hasAlkali() {
    return sodaGrams.high() > 0 || bicarbonateGrams.high() > 0 || silicateLitres.high() > 0;
  }

  /** Anhydrous soda for each litre of water. */
  public Range sodaGramsPerLitre() {
    return per(sodaGrams);
  }

  Range bicarbonateGramsPerLitre() {
    return per(bicarbonateGrams);
  }

  Range saltGramsPerLitre() {
    return per(saltGrams);
  }

  /** The same without Glauber's salt, of which crystals and powder dissolve so differently. */
  Range commonSaltGramsPerLitre() {
    return per(
        new Range(
            saltGrams.low() - sulphateGrams.low(),
            saltGrams.best() - sulphateGrams.best(),
            saltGrams.high() - sulphateGrams.high()));
  }

  /** Its pH at the likeliest amount of salt, from more or less of its sodas. */
  Optional<SodaSolution> solution(double celsius, double soda, double bicarbonate) {
    double perLitre = litres.best();
    return SodaSolution.ofGramsPerLitre(
        celsius,
        soda,
        bicarbonate,
        (saltGrams.best() - sulphateGrams.best()) / perLitre,
        sulphateGrams.best() / perLitre);
  }

  private Range per(Range grams) {
    return hasWater()
        ? new Range(
            grams.low() / litres.high(), grams.best() / litres.best(), grams.high() / litres.low())
        : NONE;
  }
}
