package strikeoff.timeline;

import java.util.List;
import java.util.Optional;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Area;
import strikeoff.units.Span;

/**
 * Frames laid on wet film for one cause: a wait that is too short in one place of the run. Colours
 * are told as paste and screen, for example {@code ink through heron key}.
 *
 * @param sameMotif true for a later colour of the same motif, false for a neighbour under the
 *     frame's overhang
 * @param certain true if the whole range of drying is too long, false if a part of it would do
 * @param pairs how many frames lie on how many films: pairs of impressions
 * @param shortLeast how much too early the worst pair is even in the fastest credible drying; not
 *     above zero if that would do
 * @param shortBest the same by the most likely drying time
 * @param shortMost the same by the slowest credible drying
 * @param area of wet film under frames, over all pairs
 * @param laterMotif the worst pair's later placement, {@code herons 2}
 * @param earlierMotif the placement whose film is wet
 * @param laid when that frame is laid
 * @param safeAt earliest minute at which it could be
 * @param surelySafeAt the same by the slowest credible drying
 * @param remedy the least wait that clears every pair of this cause by the most likely drying time;
 *     where that would do already, the one that clears slow drying
 * @param cured false if no wait in that place clears it
 * @param finish when the run ends with that wait; empty if that was not tried
 * @param cure what to write, with the finish it leads to and what clears slow drying too
 * @param otherWay a further way to clear it as a sentence that begins with a space, or empty
 * @param also other colours of the same cause with their pairs, as sentences that begin with a
 *     space
 * @param further more pairs that the same wait clears, as a sentence that begins with a space
 */
public record WetContact(
    int laterStep,
    String laterColour,
    int earlierStep,
    String earlierColour,
    boolean sameMotif,
    boolean certain,
    int pairs,
    Span shortLeast,
    Span shortBest,
    Span shortMost,
    Area area,
    String laterMotif,
    String earlierMotif,
    Moment laid,
    Moment safeAt,
    Moment surelySafeAt,
    Remedy remedy,
    boolean cured,
    Optional<Moment> finish,
    String cure,
    String otherWay,
    String also,
    String further,
    PlanPath path,
    List<Related> related,
    List<String> marks)
    implements Evidence {

  public WetContact {
    related = List.copyOf(related);
    marks = List.copyOf(marks);
  }

  /** True if the most likely drying time is too long. */
  public boolean likely() {
    return shortBest.seconds() > 0;
  }

  /** How much too early, where a part of the range would do. */
  public String inDoubt() {
    return Remedy.inDoubt(shortBest, shortMost);
  }

  /** {@code 5 times}, or {@code once}. */
  public String times() {
    return pairs == 1 ? "once" : pairs + " times";
  }
}
