package strikeoff.paste;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Mass;
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
 * @param gramsForThin thickener in all that makes the thinnest paste allowed
 * @param gramsForThick thickener in all that makes the thickest paste allowed
 * @param path of its line in the recipe
 */
public record ThickenerStrength(
    String paste,
    String thickener,
    Range share,
    Range thickenerGrams,
    Range batchGrams,
    Mass gramsForThin,
    Mass gramsForThick,
    PlanPath path)
    implements Evidence {}
