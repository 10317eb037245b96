package strikeoff.paste;

import java.util.List;
import java.util.stream.Stream;
import strikeoff.day.Moment;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Storage;
import strikeoff.policy.ReactiveGroup;
import strikeoff.units.Range;
import strikeoff.units.Span;

/**
 * How old a dye paste is when it is printed for the last time, against how long it lives.
 *
 * @param paste its name
 * @param group its reactive group
 * @param alkali what it holds of it
 * @param alkaliNamed the same in the plan's own words; empty if it names none
 * @param kept where it is kept
 * @param mixedAt when it was ready; before day 1 if it was mixed earlier
 * @param lastUse the impression at which it is oldest
 * @param lastPlacement where that is
 * @param age at that impression
 * @param lifeMinutes how long it lives: as stated for room temperature, carried over to the room's
 *     temperature by Arrhenius' law within the range of activation energies; as stated if kept cold
 * @param overLeast how much too old by the longest life; above zero if surely too old
 * @param overMost how much too old by the shortest life; above zero if perhaps too old
 * @param mixFrom the earliest moment from which a fresh batch lasts to the end
 * @param batches when the first print of each fresh batch is laid, if a new one is taken whenever
 *     the one before would be too old; one alone where a batch lasts from the first print to the
 *     end
 * @param mixLater how it is mixed just before its first print instead; no edits where it is mixed
 *     before day 1, or where one batch can't last
 * @param withoutAlkali how its alkali is left to a bath; no edits if it holds none
 * @param marks placements printed with it when it is perhaps too old
 * @param path of the paste
 */
public record PasteAge(
    String paste,
    ReactiveGroup group,
    HeldAlkali alkali,
    String alkaliNamed,
    Storage kept,
    Moment mixedAt,
    Moment lastUse,
    String lastPlacement,
    Span age,
    Range lifeMinutes,
    Span overLeast,
    Span overMost,
    Moment mixFrom,
    List<Moment> batches,
    List<Edit> mixLater,
    List<Edit> withoutAlkali,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public PasteAge {
    batches = List.copyOf(batches);
    mixLater = List.copyOf(mixLater);
    withoutAlkali = List.copyOf(withoutAlkali);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  /** Its age as a multiple of its life, by the longest life. */
  public double lives() {
    return age.minutes() / lifeMinutes.high();
  }

  /** True if it is too old at its last print by a part of the estimates at least. */
  public boolean pastItsLife() {
    return overMost.minutes() > 0;
  }

  /** The share of its dye that still lives then: at the end of one life about half does. */
  public Range alive() {
    double minutes = age.minutes();
    return new Range(
        Math.pow(0.5, minutes / lifeMinutes.low()),
        Math.pow(0.5, minutes / lifeMinutes.best()),
        Math.pow(0.5, minutes / lifeMinutes.high()));
  }

  /** The same as edits of the plan, each way for itself. */
  public List<List<Edit>> mixings() {
    return Stream.of(mixLater, withoutAlkali).filter(edits -> !edits.isEmpty()).toList();
  }
}
