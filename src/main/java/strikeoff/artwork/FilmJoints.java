package strikeoff.artwork;

import strikeoff.document.GivenUp;
import strikeoff.plan.Joint;
import strikeoff.units.Length;

/**
 * How the prints of two films meet. A lap with one of them alone on its one side and the other
 * alone on its other side is a trap; with the same on both sides one just crosses the other. Bare
 * ground between them is a gap. Else they butt.
 */
final class FilmJoints {

  private static final int NEITHER = 0;
  private static final int ONE = 1;
  private static final int OTHER = 2;
  private static final int BOTH = 3;

  /**
   * An edge that moves by this many points from row to row or more is followed along the columns
   * alone: it is three times as long there.
   */
  private static final int REACH = 4;

  /** Wider laps are areas that lie over each other on purpose, in mm. */
  private static final double WIDEST_LAP = 10;

  private final Bits one;
  private final Bits other;
  private final Widths laps;
  private final Widths gaps;
  private final int stripRows;
  private final int edgeRows;

  /** How many rows of edges that go on for a while. */
  private long butts;

  private FilmJoints(Bits one, Bits other, double along, double across, Length strip) {
    this.one = one;
    this.other = other;
    this.laps = new Widths(along, across, WIDEST_LAP);
    this.gaps = new Widths(along, across);
    this.stripRows = gaps.rows(strip.mm());
    // Lines that cross touch at their corners; an edge goes on for so long.
    this.edgeRows = (int) Math.ceil(Widths.KEPT / across);
  }

  /** A film's points, upright and turned; seen from the right side. */
  record Film(Bits bits, Bits turned) {

    static Film of(Bits bits, boolean wrong) {
      Bits right = wrong ? bits.mirrored() : bits;
      return new Film(right, right.turned());
    }
  }

  /**
   * Measures two films of one size.
   *
   * @param along mm from one point of a row to the next, on the cloth
   * @param across mm from one row to the next
   * @param strip bare ground that goes on for less lies in corners of lines that cross
   * @param off how far a frame can be off
   */
  static Joint of(Film one, Film other, double along, double across, Length strip, Length off) {
    FilmJoints upright = new FilmJoints(one.bits(), other.bits(), along, across, strip);
    upright.follow();
    FilmJoints flat = new FilmJoints(one.turned(), other.turned(), across, along, strip);
    flat.follow();
    LaidOff laid = LaidOff.of(one.bits(), other.bits(), along, across, off);
    return new Joint(
        1,
        2,
        new Length(Math.max(along, across)),
        Widths.finest(upright.laps, flat.laps, one.bits(), false),
        Widths.widest(upright.laps, flat.laps, one.bits()),
        Widths.finest(upright.gaps, flat.gaps, one.bits(), false),
        // Steps of a straight edge, along and across, are the sides of a triangle.
        new Length(Math.hypot(upright.butts * across, flat.butts * along)),
        laid.both(),
        laid.one(),
        laid.other());
  }

  private void follow() {
    Strokes lapped = new Strokes(laps.mostPoints(), laps.fewestRows(), laps::take);
    Strokes bare = new Strokes(gaps.mostPoints(), stripRows, gaps::take);
    Strokes edges = new Strokes(REACH, edgeRows, edge -> butts += edge.stroke().rows());
    RowRuns lap = new RowRuns();
    RowRuns gap = new RowRuns();
    RowRuns butt = new RowRuns();
    for (int y = 0; y <= one.rows(); y++) {
      GivenUp.ifAsked();
      lap.clear();
      gap.clear();
      butt.clear();
      if (y < one.rows()) {
        row(y, lap, gap, butt);
      }
      lap = lapped.row(y, lap);
      gap = bare.row(y, gap);
      butt = edges.row(y, butt);
    }
  }

  /** Goes over a row, stretch by stretch of what is the same. */
  private void row(int y, RowRuns lap, RowRuns gap, RowRuns butt) {
    int before = NEITHER;
    int edge = -REACH;
    int here = kind(0, y);
    for (int from = 0; from < one.columns(); ) {
      int to = Math.min(one.change(from, y), other.change(from, y));
      int next = to < one.columns() ? kind(to, y) : NEITHER;
      if (here == BOTH && apart(before, next)) {
        lap.add(from, to);
      } else if (here == NEITHER && apart(before, next)) {
        gap.add(from, to);
      }
      if (apart(here, next) && to - edge >= REACH) {
        butt.add(to - REACH / 2, to + REACH / 2);
        edge = to;
      }
      before = here;
      here = next;
      from = to;
    }
  }

  /** True if one of them stands here alone, and the other alone there. */
  private static boolean apart(int here, int there) {
    return here == ONE && there == OTHER || here == OTHER && there == ONE;
  }

  private int kind(int x, int y) {
    return (one.get(x, y) ? ONE : 0) | (other.get(x, y) ? OTHER : 0);
  }
}
