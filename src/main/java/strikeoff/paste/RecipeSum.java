package strikeoff.paste;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Share;

/**
 * A recipe's parts against the amount that the plan says is mixed.
 *
 * @param sumGrams the parts together
 * @param amount what the plan says
 * @param missing parts missing to the amount by the kindest estimate; negative if there are too
 *     many
 * @param offShare how far the sum surely lies from the amount, as a share of it
 * @param path of the recipe
 */
public record RecipeSum(
    String paste, Range sumGrams, Mass amount, Mass missing, Share offShare, PlanPath path)
    implements Evidence {}
