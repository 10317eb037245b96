package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Area;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Share;

/**
 * What one colour needs over the whole run, against what is mixed of it.
 *
 * @param paste its name
 * @param impressions how many prints it makes
 * @param pulls of the squeegee in all of them
 * @param printed area that takes paste, all impressions together, each counted once
 * @param measured true if the deposit was weighed on a strike-off, false if estimated from the mesh
 * @param onClothGrams what the pulls lay down
 * @param chargeGrams what stays in the screens and on the squeegees, each time they are filled
 * @param fillings how many times a screen is filled with it
 * @param needGrams all of it, with the share that is wasted in pots and on knives
 * @param batches how many times it is mixed
 * @param mixedGrams what is mixed in all, from the amount, or else from the recipe; empty if the
 *     plan leaves it open
 * @param shortLeast missing by the kindest estimate: above zero if it surely runs out
 * @param shortMost missing by the most careful estimate: above zero if it may run out
 * @param toMix a round amount that is enough by the most careful estimate
 * @param more what is missing to that amount; zero if nothing
 * @param over left over by the most careful estimate; zero if nothing
 * @param overShare that as a share of the need
 * @param runsOut the placement at which the pot is empty by the best estimate
 * @param marks placements printed with it
 * @param path of the amount, or of the recipe, or of the paste
 */
public record PasteUse(
    String paste,
    int impressions,
    int pulls,
    Area printed,
    boolean measured,
    Range onClothGrams,
    Range chargeGrams,
    int fillings,
    Range needGrams,
    int batches,
    Optional<Range> mixedGrams,
    Mass shortLeast,
    Mass shortMost,
    Mass toMix,
    Mass more,
    Mass over,
    Share overShare,
    Optional<String> runsOut,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public PasteUse {
    marks = List.copyOf(marks);
  }

  /** True if the plan says how much is mixed. */
  public boolean amountKnown() {
    return mixedGrams.isPresent();
  }

  /** How often its screens are filled, in words. */
  public String filled() {
    return fillings == 1 ? "once" : fillings == 2 ? "twice" : fillings + " times";
  }

  /** How the deposit is known. */
  public String basis() {
    return measured ? "weighed on a strike-off" : "estimated from the mesh";
  }

  /** Where the pot is empty, in words. */
  public String emptyAt() {
    return runsOut
        .map(p -> "by the best estimate the pot is empty at " + p)
        .orElse("by the best estimate it just suffices");
  }
}
