package strikeoff.artwork;

import java.util.Arrays;
import java.util.Optional;
import strikeoff.plan.Joint.Rim;

/**
 * Where a film stands out past a line of another one that is drawn over it: across such a rim comes
 * ground, then this film alone, then the line, then this film alone again, further in and for
 * longer. Widths of a rim count as those of laps do.
 */
final class Rims {

  /** What a run of a row is, as this film and the line are told apart. */
  private enum Kind {
    UNKNOWN,
    /** Neither of the two prints. */
    GROUND,
    COLOUR,
    LINE
  }

  /** So many runs, one after the other, tell a rim and the line beside it. */
  private static final int SEEN = 4;

  /** Two sides of a line that are drawn alike differ by so many points at most. */
  private static final int ROUNDING = 2;

  private final Widths rims;
  private final Widths lines;
  private final Strokes rimStrokes;
  private final Strokes lineStrokes;
  private RowRuns rim = new RowRuns();
  private RowRuns line = new RowRuns();

  private Bits third;
  private int y;

  /** The last runs, the latest first. */
  private final Kind[] kinds = new Kind[SEEN];

  private final int[] from = new int[SEEN];
  private final int[] to = new int[SEEN];

  /**
   * @param along mm from one point of a row to the next
   * @param across mm from one row to the next
   */
  Rims(double along, double across) {
    this.rims = new Widths(along, across, Widths.WIDEST, 1);
    this.lines = new Widths(along, across, Widths.WIDEST, 1);
    this.rimStrokes = new Strokes(rims.mostPoints(), rims.fewestRows(), rims::take);
    this.lineStrokes = new Strokes(lines.mostPoints(), lines.fewestRows(), lines::take);
  }

  /** Begins a row. */
  void clear() {
    rim.clear();
    line.clear();
  }

  /**
   * Begins a part of a row, of which nothing is known before.
   *
   * @param all what further films print: a rim that they cover is not seen, nor one beside them
   */
  void begin(Bits all, int row) {
    third = all;
    y = row;
    for (int i = 0; i < SEEN; i++) {
      kinds[i] = Kind.UNKNOWN;
      from[i] = 0;
      to[i] = 0;
    }
  }

  /**
   * Takes the next run of a part of a row.
   *
   * @param mine true if this film prints it
   * @param its true if the other one does
   */
  void run(boolean mine, boolean its, int first, int end) {
    Kind kind = its ? Kind.LINE : mine ? Kind.COLOUR : Kind.GROUND;
    if (kind == Kind.LINE && kinds[0] == Kind.LINE) {
      to[0] = end;
      return;
    }
    for (int i = SEEN - 1; i > 0; i--) {
      kinds[i] = kinds[i - 1];
      from[i] = from[i - 1];
      to[i] = to[i - 1];
    }
    kinds[0] = kind;
    from[0] = first;
    to[0] = end;
    if (are(Kind.COLOUR, Kind.LINE, Kind.COLOUR, Kind.GROUND)) {
      take(2, 0, from[2] - 1);
    } else if (are(Kind.GROUND, Kind.COLOUR, Kind.LINE, Kind.COLOUR)) {
      take(1, 3, to[1]);
    }
  }

  private boolean are(Kind... wanted) {
    return Arrays.equals(kinds, wanted);
  }

  /**
   * Takes a rim and the line beside it. Of a line down the middle of a stroke neither side is past
   * it.
   *
   * @param beyond a point of the ground beside it
   */
  private void take(int outer, int inner, int beyond) {
    int beside = (outer + inner) / 2;
    if (to[outer] - from[outer] + ROUNDING < to[inner] - from[inner]
        && third.next(from[outer], y, true) >= to[outer]
        && !third.get(beyond, y)) {
      rim.add(from[outer], to[outer]);
      line.add(from[beside], to[beside]);
    }
  }

  /** Ends a row. */
  void end(int at) {
    rim = rimStrokes.row(at, rim);
    line = lineStrokes.row(at, line);
  }

  /** Empty if there is none. */
  static Optional<Rim> of(Rims upright, Rims flat) {
    return KeptWidths.mean(upright.rims.kept(), flat.rims.kept())
        .map(
            width ->
                new Rim(
                    width,
                    KeptWidths.over(upright.rims.kept(), flat.rims.kept()),
                    KeptWidths.mean(upright.lines.kept(), flat.lines.kept())));
  }
}
