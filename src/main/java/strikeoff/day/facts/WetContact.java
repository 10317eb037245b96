package strikeoff.day.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.day.Moment;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Uncertain;
import strikeoff.units.Area;
import strikeoff.units.Chance;
import strikeoff.units.Measures;

/**
 * Frames laid on wet film for one cause: a wait that is too short in one place of the run. Colours
 * are told as paste and screen, for example {@code ink through heron key}.
 *
 * @param sameMotif true for a later colour of the same motif, false for a neighbour under the
 *     frame's overhang
 * @param beneath true if the worst pair's later print lands on the earlier one's image, which is
 *     none of its own motif
 * @param chance on how many days the worst pair's film is still wet
 * @param pairs how many frames lie on how many films: pairs of impressions
 * @param early how much too early the worst pair is
 * @param wetOnWet true if printers lay the next frame on the worst pair's film at once: thickened
 *     dye on plant fibres of ordinary mass; then no pair of this cause is another
 * @param area of images with wet film under frames, over all pairs, printed or not
 * @param most the most wet film that may lie there: what prints there, by its film; without one no
 *     more than the image there, and no more than it prints in all
 * @param known true if that much lies there: by films, or because the images print all over
 * @param onRails what of it lies under the rails and not under the mesh, by films; empty if one of
 *     them has none
 * @param laterMotif the worst pair's later placement, {@code herons 2}
 * @param earlierMotif the placement whose film is wet
 * @param laid when that frame is laid
 * @param safeAt earliest minute at which it could be, on an ordinary day
 * @param surelySafeAt the same in slow drying
 * @param remedy the least wait in whole minutes that clears every pair of this cause in slow drying
 *     too, or on an ordinary day where none does
 * @param cured false if no wait in that place clears it
 * @param finish when the run ends with that wait; empty if that was not tried
 * @param ways what to write, the better way first
 * @param ordinary what came of the least wait that clears an ordinary day
 * @param surely the same of one that clears slow drying too
 * @param passes the same of printing every other placement first; empty if that doesn't clear it
 * @param passesFirst whether that is the better way
 * @param also other colours of the same cause
 * @param furtherPairs more pairs that the same wait clears
 */
public record WetContact(
    int laterStep,
    String laterColour,
    int earlierStep,
    String earlierColour,
    boolean sameMotif,
    boolean beneath,
    Chance chance,
    int pairs,
    BeforeSafe early,
    boolean wetOnWet,
    Area area,
    Area most,
    boolean known,
    Optional<Area> onRails,
    String laterMotif,
    String earlierMotif,
    Moment laid,
    Moment safeAt,
    Moment surelySafeAt,
    Remedy remedy,
    boolean cured,
    Optional<Moment> finish,
    List<Remedy> ways,
    Trials.Outcome ordinary,
    Trials.Outcome surely,
    Optional<Trials.Outcome> passes,
    boolean passesFirst,
    List<Colours> also,
    int furtherPairs,
    PlanPath path,
    List<Related> related,
    List<String> marks)
    implements Uncertain {

  /** A colour that is laid on another one, and how often. */
  public record Colours(String later, String earlier, int pairs) {}

  public WetContact {
    also = List.copyOf(also);
    ways = List.copyOf(ways);
    related = List.copyOf(related);
    marks = List.copyOf(marks);
  }

  /** True if it is more likely wet than not. */
  public boolean likely() {
    return early.ordinary().seconds() > 0;
  }

  /** The ways as edits of the plan. */
  public List<List<Edit>> edits(Measures units) {
    return ways.stream().map(way -> way.edits(units)).flatMap(List::stream).toList();
  }
}
