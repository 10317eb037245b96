package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Area;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Share;
import strikeoff.units.Volume;

/**
 * What one colour needs over the whole run, against what is mixed of it.
 *
 * @param paste its name
 * @param impressions how many prints it makes
 * @param pulls of the squeegee in all of them
 * @param printed area that takes paste, all impressions together, each counted once
 * @param measured true if the deposit was weighed on a strike-off, false if estimated from the mesh
 * @param onClothGrams what the pulls lay down
 * @param leftGrams what is lost in screens and on squeegees, each time one is washed out
 * @param scrapedBack what lies before the blade at the pull that asks most of the pot and goes back
 *     into it, by the best estimate
 * @param washes how many times a screen is washed out that held it
 * @param needGrams the most that is out of the pot at any pull, with the share that is wasted in
 *     pots and on knives
 * @param batches how many times it is mixed
 * @param mixedGrams what is mixed in all, from the amount, or else from the recipe; empty if the
 *     plan leaves it open
 * @param shortLeast missing by the kindest estimate: above zero if it surely runs out
 * @param shortBest missing by the best estimate
 * @param shortMost missing by the most careful estimate: above zero if it may run out
 * @param toMix a round amount that is enough by the most careful estimate
 * @param filled the volume of each mixing that is enough by the most careful estimate, as closely
 *     as it is filled by eye; empty where the plan states no volume
 * @param enough what to write so that each mixing is enough, recipe and all
 * @param more what is missing to that amount; zero if nothing
 * @param over left over by the most careful estimate; zero if nothing
 * @param overShare that as a share of the need
 * @param restLives how many minutes what is left over lives with its alkali in it; empty for paint,
 *     for paste without alkali, and where nobody knows
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
    Range leftGrams,
    Mass scrapedBack,
    int washes,
    Range needGrams,
    int batches,
    Optional<Range> mixedGrams,
    Mass shortLeast,
    Mass shortBest,
    Mass shortMost,
    Mass toMix,
    Optional<Volume> filled,
    List<Edit> enough,
    Mass more,
    Mass over,
    Share overShare,
    Optional<Range> restLives,
    Optional<String> runsOut,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public PasteUse {
    enough = List.copyOf(enough);
    marks = List.copyOf(marks);
  }

  /** True if the plan says how much is mixed. */
  public boolean amountKnown() {
    return mixedGrams.isPresent();
  }

  /** Minutes after which the rest is surely dead; without end where it is kept, or nobody knows. */
  public double restDead() {
    return restLives.map(Range::high).orElse(Double.POSITIVE_INFINITY);
  }

  /** The same as edits of the plan: one way. */
  public List<List<Edit>> enoughEdits() {
    return List.of(enough);
  }

  /** The same in any case as a mass. */
  public Mass mixEach() {
    return new Mass(toMix.grams() / Math.max(1, batches));
  }
}
