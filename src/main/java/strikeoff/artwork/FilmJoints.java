package strikeoff.artwork;

import java.util.Optional;
import strikeoff.document.GivenUp;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Joint;
import strikeoff.plan.Joint.Side;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * How the prints of two films meet. A lap with one of them alone on its one side and the other
 * alone on its other side is a trap; with the same on both sides one just crosses the other. Bare
 * ground between them is a gap, where no third film prints. Where neither is wider than a point of
 * the films they butt.
 */
final class FilmJoints {

  private static final int NEITHER = 0;
  private static final int ONE = 1;
  private static final int OTHER = 2;
  private static final int BOTH = 3;

  /** Wider laps are areas that lie over each other on purpose, in mm. */
  private static final double WIDEST_LAP = 10;

  private final Widths laps;
  private final Widths gaps;

  private final Butts butts;
  private final Strokes lapped;
  private final Strokes bare;
  private final Strokes edges;
  private final Rims rimsOfOne;
  private final Rims rimsOfOther;
  private RowRuns lap = new RowRuns();
  private RowRuns gap = new RowRuns();
  private RowRuns butt = new RowRuns();

  private FilmJoints(double along, double across, Length strip) {
    this.laps = new Widths(along, across, WIDEST_LAP, 1);
    this.gaps = new Widths(along, across, Widths.WIDEST, 1);
    this.butts = new Butts(along, across);
    this.rimsOfOne = new Rims(along, across);
    this.rimsOfOther = new Rims(along, across);
    this.lapped = new Strokes(laps.mostPoints(), laps.fewestRows(), laps::take);
    this.bare = new Strokes(gaps.mostPoints(), gaps.rows(strip.mm()), gaps::take);
    // Lines that cross touch at their corners; an edge goes on for so long.
    int edgeRows = (int) Math.ceil(Widths.KEPT / across);
    this.edges = new Strokes(Butts.WIDEST, edgeRows, edge -> butts.take(edge.stroke()));
  }

  /** Of two films that come near to each other nowhere. */
  static Joint none(double along, double across) {
    Side none = new Side(new Area(0), new Area(0), Optional.empty(), Optional.empty());
    return new Joint(
        1,
        2,
        new Length(Math.max(along, across)),
        Optional.empty(),
        Optional.empty(),
        new Length(0),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new Area(0),
        none,
        none);
  }

  /**
   * Measures two films.
   *
   * @param where they come near to each other
   * @param along mm from one point of a row to the next, on the cloth
   * @param across mm from one row to the next
   * @param limits bare ground that goes on for less than their strip lies in corners of lines that
   *     cross
   * @param edges of films that were compared before
   */
  static Joint of(
      TwoFilms films,
      FilmsNear where,
      double along,
      double across,
      JointLimits limits,
      KnownEdges edges) {
    Bits one = films.one();
    FilmJoints upright = new FilmJoints(along, across, limits.strip());
    for (int y = 0; y < films.rows(); y++) {
      upright.row(films, y, y, where.inRow(y));
    }
    upright.end(one.rows());
    FilmJoints flat = new FilmJoints(across, along, limits.strip());
    // Turned by and by: a whole film turned takes as much room as the film.
    for (int x = 0; x < one.columns(); x += Long.SIZE) {
      if (comeNear(where, x, Math.min(one.columns(), x + Long.SIZE))) {
        TwoFilms turned = films.turned(x);
        for (int y = 0; y < turned.rows(); y++) {
          flat.row(turned, y, x + y, where.inColumn(x + y));
        }
      } else {
        flat.end(x);
      }
    }
    flat.end(one.columns());
    LaidOff laid = LaidOff.of(films, where, along, across, limits.off());
    Optional<Finest> lap = KeptWidths.finest(upright.laps.kept(), flat.laps.kept(), one, false);
    AcrossLap itsWidth = new AcrossLap(one, films.other(), along, across);
    return new Joint(
        1,
        2,
        new Length(Math.max(along, across)),
        lap,
        KeptWidths.widest(upright.laps.kept(), flat.laps.kept(), one),
        KeptWidths.over(upright.laps.kept(), flat.laps.kept()),
        KeptWidths.finest(upright.gaps.kept(), flat.gaps.kept(), one, false),
        Butts.of(upright.butts, flat.butts, one.rows()),
        KeptWidths.strips(upright.gaps.kept(), flat.gaps.kept(), limits.narrow()),
        where.isNowhere()
            ? Optional.empty()
            : EdgeFitting.of(one, films.other(), along, across, limits.poses(), edges),
        laid.both(),
        laid.one()
            .with(
                lap.flatMap(l -> itsWidth.of(one, l.place())),
                Rims.of(upright.rimsOfOne, flat.rimsOfOne)),
        laid.other()
            .with(
                lap.flatMap(l -> itsWidth.of(films.other(), l.place())),
                Rims.of(upright.rimsOfOther, flat.rimsOfOther)));
  }

  private static boolean comeNear(FilmsNear where, int from, int to) {
    for (int x = from; x < to; x++) {
      if (where.inColumn(x).length > 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * Follows a row of both.
   *
   * @param y where in these
   * @param at where in all
   * @param stretches of it in which they come near to each other
   */
  private void row(TwoFilms films, int y, int at, int[] stretches) {
    GivenUp.ifAsked();
    lap.clear();
    gap.clear();
    butt.clear();
    rimsOfOne.clear();
    rimsOfOther.clear();
    for (int i = 0; i < stretches.length; i += 2) {
      stretch(films, y, stretches[i], stretches[i + 1]);
    }
    take(at);
  }

  /** A row with nothing, which ends all. */
  private void end(int at) {
    lap.clear();
    gap.clear();
    butt.clear();
    rimsOfOne.clear();
    rimsOfOther.clear();
    take(at);
  }

  private void take(int at) {
    lap = lapped.row(at, lap);
    gap = bare.row(at, gap);
    butt = edges.row(at, butt);
    rimsOfOne.end(at);
    rimsOfOther.end(at);
  }

  /** Goes over a part of a row, run by run of what is the same. */
  private void stretch(TwoFilms films, int y, int first, int end) {
    Bits one = films.one();
    Bits other = films.other();
    Bits third = films.third();
    int before = NEITHER;
    int edge = 0;
    int here = kind(one, other, first, y);
    rimsOfOne.begin(third, y);
    rimsOfOther.begin(third, y);
    for (int from = first; from < end; ) {
      int to = Math.min(end, Math.min(one.change(from, y), other.change(from, y)));
      int next = to < end ? kind(one, other, to, y) : NEITHER;
      rimsOfOne.run((here & ONE) != 0, (here & OTHER) != 0, from, to);
      rimsOfOther.run((here & OTHER) != 0, (here & ONE) != 0, from, to);
      if (here == BOTH && apart(before, next)) {
        lap.add(from, to);
      } else if (here == NEITHER && apart(before, next) && third.next(from, y, true) >= to) {
        // Where a third colour prints between them there is no ground from one to the other.
        gap.add(from, to);
      }
      if (apart(here, next) && to - Butts.REACH >= edge && open(third, to, to, y)) {
        edge = Butts.add(butt, to, to, 0);
      } else if (apart(before, next)
          && to - from <= Butts.MOST
          && from - Butts.REACH >= edge
          && (here == BOTH ? open(third, from, to, y) : third.next(from, y, true) >= to)) {
        edge = Butts.add(butt, from, to, here == BOTH ? to - from : from - to);
      }
      before = here;
      here = next;
      from = to;
    }
  }

  /** False where a third colour prints over all of an edge and a point on either side. */
  private static boolean open(Bits third, int from, int to, int y) {
    return third.next(from - 1, y, false) <= to;
  }

  /** True if one of them stands here alone, and the other alone there. */
  private static boolean apart(int here, int there) {
    return here == ONE && there == OTHER || here == OTHER && there == ONE;
  }

  private static int kind(Bits one, Bits other, int x, int y) {
    return (one.get(x, y) ? ONE : 0) | (other.get(x, y) ? OTHER : 0);
  }
}
