package strikeoff.artwork;

import java.util.function.Consumer;

/** Follows runs from row to row, and hands on each stroke once it ends, or part by part. */
final class Strokes {

  /** Strokes that go on across a film are many rows in memory, and are looked at part by part. */
  private static final int LONGEST = 1024;

  /** A part is at least so many times as long as the shortest stroke. */
  private static final int MANY = 16;

  /** So many times as long is what is left of it to go on with: a tip is told by less. */
  private static final int LEFT = 4;

  private final int widest;
  private final int fewestRows;
  private final int longest;
  private final int kept;
  private final Consumer<Ended> ended;

  private RowRuns above = new RowRuns();
  private Stroke[] strokes = new Stroke[0];
  private boolean[] free = new boolean[0];

  /** Filled anew for each row, by turns with those above: a film has many rows. */
  private Stroke[] next = new Stroke[0];

  private boolean[] nextFree = new boolean[0];
  private int[] over = new int[0];
  private int[] under = new int[0];

  /**
   * @param widest runs of more points are no part of a stroke
   * @param fewestRows shorter strokes are not handed on
   */
  Strokes(int widest, int fewestRows, Consumer<Ended> ended) {
    this.widest = widest;
    this.fewestRows = fewestRows;
    this.longest = Math.max(LONGEST, MANY * fewestRows);
    this.kept = LEFT * fewestRows;
    this.ended = ended;
  }

  /**
   * A whole stroke, or a long part of one.
   *
   * @param beginsFree true if nothing is set beside its first row, in the row before
   * @param endsFree the same of its last row
   */
  record Ended(Stroke stroke, boolean beginsFree, boolean endsFree) {}

  /**
   * The next row.
   *
   * @param runs of it, which are kept
   * @return those of the row before, to be filled anew
   */
  RowRuns row(int y, RowRuns runs) {
    if (next.length < runs.count()) {
      next = new Stroke[2 * runs.count()];
      nextFree = new boolean[2 * runs.count()];
    }
    over = meets(above, runs, over);
    under = meets(runs, above, under);
    for (int i = 0; i < runs.count(); i++) {
      nextFree[i] = under[i] == NONE;
      boolean one = under[i] >= 0 && over[under[i]] == i;
      boolean fits = runs.to(i) - runs.from(i) <= widest;
      Stroke stroke = one && fits ? strokes[under[i]] : null;
      if (stroke != null) {
        nextFree[i] = free[under[i]];
        strokes[under[i]] = null;
        if (stroke.rows() >= longest) {
          ended.accept(new Ended(stroke.first(stroke.rows() - kept), nextFree[i], false));
          stroke.keep(kept);
          nextFree[i] = false;
        }
      } else if (fits) {
        stroke = new Stroke(y);
      }
      if (stroke != null) {
        stroke.add(runs.from(i), runs.to(i));
      }
      next[i] = stroke;
    }
    for (int i = 0; i < above.count(); i++) {
      if (strokes[i] != null && strokes[i].rows() >= fewestRows) {
        ended.accept(new Ended(strokes[i], free[i], over[i] == NONE));
      }
    }
    RowRuns spare = above;
    Stroke[] spareStrokes = strokes;
    boolean[] spareFree = free;
    above = runs;
    strokes = next;
    free = nextFree;
    next = spareStrokes;
    nextFree = spareFree;
    return spare;
  }

  private static final int NONE = -1;
  private static final int SEVERAL = -2;

  /**
   * Of each run which one of the other row it meets.
   *
   * @param room for them, if it is enough
   */
  private static int[] meets(RowRuns runs, RowRuns others, int[] room) {
    int[] meets = room.length < runs.count() ? new int[2 * runs.count()] : room;
    int other = 0;
    for (int i = 0; i < runs.count(); i++) {
      meets[i] = NONE;
      while (other < others.count() && others.to(other) <= runs.from(i)) {
        other++;
      }
      if (other < others.count() && others.from(other) < runs.to(i)) {
        boolean more = other + 1 < others.count() && others.from(other + 1) < runs.to(i);
        meets[i] = more ? SEVERAL : other;
      }
    }
    return meets;
  }
}
