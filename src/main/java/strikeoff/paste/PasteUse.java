package strikeoff.paste;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Area;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
import strikeoff.units.Range;
import strikeoff.units.Share;
import strikeoff.units.Span;
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

  /** The same in words. */
  public String restLivesFor() {
    return restLives.map(life -> new Span(life.best()).text()).orElse("for days");
  }

  /** What the need is made of, by the best estimate, so that a large one can be believed. */
  public String parts(Measures units) {
    double wasted = needGrams.best() - onClothGrams.best() - leftGrams.best() - scrapedBack.grams();
    return "Of what it needs "
        + new Mass(onClothGrams.best()).text(units)
        + " lies on the cloth ("
        + printed.text(units)
        + ", "
        + (pulls == 1 ? "1 pull" : pulls + " pulls")
        + ", deposit "
        + basis()
        + "). "
        + new Mass(leftGrams.best()).text(units)
        + " goes down the sink where "
        + (washes == 1 ? "a screen is" : "screens are")
        + " washed out "
        + washed()
        + " (what fills the mesh, clings to the blade, and is left of the bead along it). "
        + scrapedBack.text(units)
        + " lies before the blade at its last pulls, which can't print without it, and is scraped"
        + " back. "
        + new Mass(wasted).text(units)
        + " sticks to pots and knives";
  }

  /** How often its screens are washed out, in words. */
  public String washed() {
    return Phrase.times(washes);
  }

  /** How the deposit is known. */
  public String basis() {
    return measured ? "weighed on a strike-off" : "estimated from the mesh";
  }

  /**
   * A round amount for each mixing that is enough by the most careful estimate: of a paste that the
   * plan measures by volume, a volume.
   */
  public String enoughEach(Measures units) {
    return filled
        .map(volume -> volume.roundedUp(units))
        .orElseGet(() -> mixEach().roundedUp(units));
  }

  /** The same as edits of the plan: one way. */
  public List<List<Edit>> enoughEdits() {
    return List.of(enough);
  }

  /** The same in any case as a mass. */
  public Mass mixEach() {
    return new Mass(toMix.grams() / Math.max(1, batches));
  }

  /** How much to mix, as an instruction without a full stop. */
  public String mixingEnough(Measures units) {
    String parts = enough.size() > 1 ? ", with all parts of its recipe in proportion" : "";
    if (batches > 1 || filled.isPresent()) {
      return "Mix " + enoughEach(units) + (batches > 1 ? " each time" : "") + parts;
    }
    return "Mix "
        + toMix.roundedUp(units)
        + (more.grams() > 0 ? ", " + more.roundedUp(units) + " more" : "")
        + parts;
  }

  /** Where the pot is empty, in words. */
  public String emptyAt() {
    return runsOut
        .map(p -> "by the best estimate the pot is empty at " + p)
        .orElse("by the best estimate it just suffices");
  }
}
