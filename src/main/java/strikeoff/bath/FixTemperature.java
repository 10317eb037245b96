package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Measures;
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

  /** Edits that cool it, or have the print steamed where the cloth stands no such water. */
  public List<List<Edit>> coolingEdits(Measures units) {
    return isTooWarmForCloth()
        ? toSteam
        : List.of(List.of(new Edit.Write(path, warmest().most(units))));
  }

  /** True if the cloth stands no water that fixes. */
  public boolean isTooWarmForCloth() {
    return enough().compareTo(stands) > 0;
  }

  /** How warm it may be at the most, for dye and cloth. */
  public Temperature warmest() {
    return warmth.warmest().compareTo(stands) > 0 ? stands : warmth.warmest();
  }

  /** Edits that warm it, where that can be done, and that have the print steamed. */
  public List<List<Edit>> edits(Measures units) {
    List<List<Edit>> edits = new ArrayList<>();
    if (!tooWarmToKeep && !isTooWarmForCloth()) {
      edits.add(List.of(new Edit.Write(path, warmth.coolest().enough(units))));
    }
    edits.addAll(toSteam);
    return edits;
  }
}
