package strikeoff.layout;

import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.units.Length;

/**
 * How a border's repeats divide its run along the edge.
 *
 * @param run from its beginning to its end
 * @param whole whole repeats that fit into the run; only these are laid
 * @param rest what is left of the run after them; below zero if they are a little too long for it
 * @param laidEvery from one repeat to the next as they are laid: the stated repeat, or what shares
 *     a misfit within the closing tolerance out between them
 * @param longer repeat length that closes the run with {@code repeats} of them
 * @param repeats {@code whole} repeats, or as many as hold the design; 0 if the run holds none
 * @param shorter repeat length that closes it with one repeat more
 * @param designLength length of the design along the edge as it lies
 * @param wholeTo where its whole repeats end along the edge; empty if it holds none, or goes all
 *     round
 * @param allRound true if it runs all round a closed cloth
 */
public record BorderRepeats(
    String arrangement,
    Length run,
    Length repeat,
    int whole,
    Length rest,
    Length laidEvery,
    Length longer,
    int repeats,
    Length shorter,
    Length designLength,
    Optional<Length> wholeTo,
    boolean allRound,
    PlanPath path)
    implements Evidence {

  static BorderRepeats of(
      Arrangement.Border border, double designLength, Tube tube, Length closing) {
    double run = border.to().mm() - border.from().mm();
    int whole = (int) Math.min(Integer.MAX_VALUE, whole(border, closing));
    double rest = run - whole * border.repeat().mm();
    int holds = holds(run, designLength);
    int repeats = Math.min(Math.max(1, whole), holds);
    boolean allRound = tube.closed() && run >= tube.circumference() - Length.TOLERANCE;
    boolean shared = whole > 0 && Math.abs(rest) <= closing.mm() + Length.TOLERANCE;
    return new BorderRepeats(
        border.name(),
        new Length(run),
        border.repeat(),
        whole,
        new Length(Math.abs(rest) < Length.TOLERANCE ? 0 : rest),
        shared ? new Length(run / whole) : border.repeat(),
        new Length(run / Math.max(1, repeats)),
        repeats,
        new Length(run / (repeats + 1.0)),
        new Length(designLength),
        allRound || whole == 0
            ? Optional.empty()
            : Optional.of(new Length(border.from().mm() + whole * border.repeat().mm())),
        allRound,
        border.path().key("repeat"));
  }

  /**
   * Whole repeats in a run that may be too short for the last one by the closing tolerance; in
   * floating point, since it may be beyond all counting.
   */
  static double whole(Arrangement.Border border, Length closing) {
    double run = border.to().mm() - border.from().mm();
    double repeat = border.repeat().mm();
    // No more than half a repeat, or one would be counted that isn't there.
    double give = Math.min(closing.mm() + Length.TOLERANCE, repeat / 2);
    return Math.max(0, Math.floor((run + give) / repeat));
  }

  /** How often the design finds room in a run. */
  private static int holds(double run, double designLength) {
    double times = Math.floor((run + Length.TOLERANCE) / Math.max(designLength, 1));
    return (int) Math.min(Integer.MAX_VALUE, Math.max(0, times));
  }

  /** Repeats that close the run if each is made a little shorter. */
  public int oneMore() {
    return repeats + 1;
  }
}
