package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Measures;
import strikeoff.units.Phrase;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * The temperature of a soak or a batch that dye reacts in.
 *
 * @param change how far the colour is off that is most off by then, by the law alone: a CIELAB
 *     difference
 * @param batched true for a batch, false for a soak
 * @param tooWarmToKeep true for a batch of a group that asks for more warmth than people can keep
 * @param fibre the fibre of the cloth that stands least in warm water
 * @param stands the hottest water that does it no harm
 * @param steamed how long a pot steamer takes for the same dyes
 * @param toSteam edits that make steam of it
 */
public record FixTemperature(
    Warmth warmth,
    double change,
    boolean batched,
    boolean tooWarmToKeep,
    String fibre,
    Temperature stands,
    Span steamed,
    List<List<Edit>> toSteam,
    PlanPath path)
    implements Evidence {

  public FixTemperature {
    toSteam = List.copyOf(toSteam);
  }

  /** From where on it is fixed: of a batch what it bears, of a bath its window. */
  public Temperature enough() {
    return batched ? warmth.bears() : warmth.coolest();
  }

  /** The same in words. */
  public String enough(Measures units) {
    return enough().enough(units);
  }

  /** What to do where it is too cold, as an instruction without a full stop. */
  public String warming(Measures units) {
    return !batched
        ? "Warm the bath to " + enough(units) + ", cover it and stand it in warm water"
        : "Keep it at "
            + enough(units)
            + " or warmer: in an airing cupboard, or under a blanket with a hot-water bottle";
  }

  /** What spares the dye where it is too hot, likewise. */
  public String cooling(Measures units) {
    return isTooWarmForCloth()
        ? Phrase.capital(steam()) + ": " + clothStands(units)
        : "Let it cool to between "
            + warmth.coolest().enough(units)
            + " and "
            + warmest().most(units);
  }

  /** Edits for {@link #cooling}. */
  public List<List<Edit>> coolingEdits(Measures units) {
    return isTooWarmForCloth()
        ? toSteam
        : List.of(List.of(new Edit.Write(path, warmest().most(units))));
  }

  private boolean isTooWarmForCloth() {
    return enough().compareTo(stands) > 0;
  }

  private Temperature warmest() {
    return warmth.warmest().compareTo(stands) > 0 ? stands : warmth.warmest();
  }

  private String steam() {
    return "steam the print for " + steamed.text() + ", with baking soda in the paste";
  }

  private String clothStands(Measures units) {
    return fibre + " stands water of " + stands.most(units) + " at the most";
  }

  /** The same where no batch is kept so warm, or where it is far too cold. */
  public String warmingOrSteam(Measures units) {
    String steam = steam();
    if (isTooWarmForCloth()) {
      return Phrase.capital(steam) + ": " + clothStands(units);
    }
    return tooWarmToKeep
        ? Phrase.capital(steam) + ": nobody keeps a batch at " + warmth.coolest().enough(units)
        : warming(units) + "; or " + steam;
  }

  /** Edits for {@link #warmingOrSteam}. */
  public List<List<Edit>> edits(Measures units) {
    List<List<Edit>> edits = new ArrayList<>();
    if (!tooWarmToKeep && !isTooWarmForCloth()) {
      edits.add(List.of(new Edit.Write(path, warmth.coolest().enough(units))));
    }
    edits.addAll(toSteam);
    return edits;
  }
}
