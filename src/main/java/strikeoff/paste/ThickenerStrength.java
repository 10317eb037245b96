package strikeoff.paste;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.policy.Limit;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.PerKilogram;
import strikeoff.units.Range;

/**
 * How much thickener a dye paste holds, as dry powder by mass for a volume of paste. It says
 * nothing of the viscosity: grades of alginate differ twentyfold in that, and no published table
 * ties the two.
 *
 * @param thickener its name
 * @param share g for each ml of paste: 0.02 is 2 % w/v
 * @param thickenerGrams of it in one batch
 * @param batchGrams what one batch weighs
 * @param thinnest how little thickener a paste may hold
 * @param thickest how much
 * @param gramsForThin thickener in all that makes the thinnest paste allowed, of a high-viscosity
 *     grade
 * @param gramsForThinGrade the same of a low-viscosity grade
 * @param gramsForThick thickener in all that makes the thickest paste allowed
 * @param path of its line in the recipe
 */
public record ThickenerStrength(
    String paste,
    String thickener,
    Range share,
    Range thickenerGrams,
    Range batchGrams,
    Limit thinnest,
    Limit thickest,
    Mass gramsForThin,
    Mass gramsForThinGrade,
    Mass gramsForThick,
    PlanPath path)
    implements Evidence {

  /** The thickener of a batch as it was weighed, also where that is less than a gram. */
  public String weighed(Measures units) {
    Mass weighed = new Mass(thickenerGrams.best());
    return PerKilogram.isMetric(units) && weighed.grams() < 1
        ? Numbers.plain(weighed.grams(), 2) + " g"
        : weighed.text(units);
  }

  /**
   * The share by the best estimate, to a hundredth of a per cent, so that it differs from limits.
   */
  public String told() {
    return Numbers.plain(Math.floor(share.best() * 1e4 + 1e-6) / 100, 2) + " %";
  }
}
