package strikeoff.layout;

import strikeoff.plan.Arrangement;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Length;

/**
 * How a border's repeats divide its run along the edge.
 *
 * @param run from its beginning to its end
 * @param whole whole repeats that fit into the run; only these are laid
 * @param rest what is left of the run after them
 * @param longer repeat length that closes the run with {@code whole} repeats, or with one if none
 *     fits
 * @param shorter repeat length that closes it with one repeat more
 * @param designLength length of the design along the edge as it lies
 * @param allRound true if it runs all round a closed cloth
 */
public record BorderRepeats(
    String arrangement,
    Length run,
    Length repeat,
    int whole,
    Length rest,
    Length longer,
    Length shorter,
    Length designLength,
    boolean allRound,
    PlanPath path)
    implements Evidence {

  static BorderRepeats of(Arrangement.Border border, double designLength, Tube tube) {
    double run = border.to().mm() - border.from().mm();
    int whole = (int) Math.min(Integer.MAX_VALUE, whole(border));
    double rest = run - whole * border.repeat().mm();
    return new BorderRepeats(
        border.name(),
        new Length(run),
        border.repeat(),
        whole,
        new Length(Math.abs(rest) < Tube.ROUNDING ? 0 : rest),
        new Length(run / Math.max(1, whole)),
        new Length(run / (whole + 1.0)),
        new Length(designLength),
        tube.closed() && run >= tube.circumference() - Tube.ROUNDING,
        border.path().key("repeat"));
  }

  /** Whole repeats in a run; in floating point, since it may be beyond all counting. */
  static double whole(Arrangement.Border border) {
    double run = border.to().mm() - border.from().mm();
    return Math.max(0, Math.floor((run + Tube.ROUNDING) / border.repeat().mm()));
  }

  /** Repeats that close the run if each is made a little shorter. */
  public int oneMore() {
    return whole + 1;
  }

  /** Repeats that close the run if each is made a little longer. */
  public int atLeastOne() {
    return Math.max(1, whole);
  }
}
