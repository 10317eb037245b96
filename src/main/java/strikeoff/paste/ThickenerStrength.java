package strikeoff.paste;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.policy.Limit;
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
    implements Evidence {}
