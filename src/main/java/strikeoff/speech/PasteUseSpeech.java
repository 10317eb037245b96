package strikeoff.speech;

import strikeoff.paste.HiddenUnderOpaque;
import strikeoff.paste.PasteUse;
import strikeoff.units.Mass;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
import strikeoff.units.Span;

/** Says how much of a paste a run needs and what to mix. */
public final class PasteUseSpeech {

  private PasteUseSpeech() {}

  /** The same in words. */
  public static String restLivesFor(PasteUse use) {
    return use.restLives().map(life -> new Span(life.best()).text()).orElse("for days");
  }

  /** What the need is made of, by the best estimate, so that a large one can be believed. */
  public static String parts(PasteUse use, Measures units) {
    double wasted =
        use.needGrams().best()
            - use.onClothGrams().best()
            - use.leftGrams().best()
            - use.scrapedBack().grams();
    return "Of what it needs "
        + new Mass(use.onClothGrams().best()).text(units)
        + " lies on the cloth ("
        + use.printed().text(units)
        + ", "
        + (use.pulls() == 1 ? "1 pull" : use.pulls() + " pulls")
        + ", deposit "
        + basis(use)
        + "). "
        + new Mass(use.leftGrams().best()).text(units)
        + " goes down the sink where "
        + (use.washes() == 1 ? "a screen is" : "screens are")
        + " washed out "
        + washed(use)
        + " (what fills the mesh, clings to the blade, and is left of the bead along it). "
        + use.scrapedBack().text(units)
        + " lies before the blade at its last pulls, which can't print without it, and is scraped"
        + " back. "
        + new Mass(wasted).text(units)
        + " sticks to pots and knives";
  }

  public static String areaText(HiddenUnderOpaque hidden, Measures units) {
    return ArtworkSpeech.toTenths(hidden.area(), units);
  }

  /** What it costs, where anything is printed. */
  public static String cost(HiddenUnderOpaque hidden, Measures units) {
    return hidden.prints() == 0
        ? ""
        : ", which is about "
            + hidden.grams().text(units)
            + " of paste in "
            + (hidden.prints() == 1 ? "one print" : hidden.prints() + " prints");
  }

  public static String table(HiddenUnderOpaque hidden) {
    return SequenceSpeech.laid(hidden.railed());
  }

  /** How often its screens are washed out, in words. */
  public static String washed(PasteUse use) {
    return Phrase.times(use.washes());
  }

  /** How the deposit is known. */
  public static String basis(PasteUse use) {
    return use.measured() ? "weighed on a strike-off" : "estimated from the mesh";
  }

  /**
   * A round amount for each mixing that is enough by the most careful estimate: of a paste that the
   * plan measures by volume, a volume.
   */
  public static String enoughEach(PasteUse use, Measures units) {
    return use.filled()
        .map(volume -> volume.roundedUp(units))
        .orElseGet(() -> use.mixEach().roundedUp(units));
  }

  /** How much to mix, as an instruction without a full stop. */
  public static String mixingEnough(PasteUse use, Measures units) {
    String parts = use.enough().size() > 1 ? ", with all parts of its recipe in proportion" : "";
    if (use.batches() > 1 || use.filled().isPresent()) {
      return "Mix " + enoughEach(use, units) + (use.batches() > 1 ? " each time" : "") + parts;
    }
    return "Mix "
        + use.toMix().roundedUp(units)
        + (use.more().grams() > 0 ? ", " + use.more().roundedUp(units) + " more" : "")
        + parts;
  }

  /** Where the pot is empty, in words. */
  public static String emptyAt(PasteUse use) {
    return use.runsOut()
        .map(p -> "by the best estimate the pot is empty at " + p)
        .orElse("by the best estimate it just suffices");
  }
}
