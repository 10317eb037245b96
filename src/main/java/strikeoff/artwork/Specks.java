package strikeoff.artwork;

import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import strikeoff.plan.Artwork.Fine;

/** Counts what stands by itself and is small, by its area; what touches at a corner is one. */
final class Specks {

  private static final int BINS = 100;

  private final double point;
  private final long[] byArea = new long[BINS];
  private RowRuns above = new RowRuns();

  /** Of the row above and then of both, filled anew for each row: a film has many rows. */
  private int[] parent = new int[0];

  private long[] area = new long[0];

  private boolean[] goesOn = new boolean[0];
  private int[] first = new int[0];
  private int[] whole = new int[0];
  private long[] areas = new long[0];

  /**
   * @param point area of a point, in mm²
   */
  Specks(double point) {
    this.point = point;
  }

  /** The next row, which is kept until the one after it. */
  void row(RowRuns runs) {
    int before = above.count();
    int both = before + runs.count();
    if (parent.length < both) {
      parent = Arrays.copyOf(parent, 2 * both);
      area = Arrays.copyOf(area, 2 * both);
      goesOn = new boolean[2 * both];
      first = new int[2 * both];
      whole = new int[2 * both];
      areas = new long[2 * both];
    }
    int other = 0;
    for (int i = 0; i < runs.count(); i++) {
      int now = before + i;
      parent[now] = now;
      area[now] = runs.to(i) - runs.from(i);
      while (other < before && above.to(other) < runs.from(i)) {
        other++;
      }
      for (int j = other; j < before && above.from(j) <= runs.to(i); j++) {
        join(parent, area, j, now);
      }
    }
    Arrays.fill(goesOn, 0, both, false);
    for (int i = before; i < both; i++) {
      goesOn[root(parent, i)] = true;
    }
    for (int i = 0; i < before; i++) {
      if (parent[i] == i && !goesOn[i]) {
        ended(area[i]);
      }
    }
    // Wholes are numbered by the first of their runs in this row, which is then the one above.
    Arrays.fill(first, 0, both, -1);
    for (int i = 0; i < runs.count(); i++) {
      int root = root(parent, before + i);
      if (first[root] < 0) {
        first[root] = i;
        areas[i] = area[root];
      }
      whole[i] = first[root];
    }
    System.arraycopy(whole, 0, parent, 0, runs.count());
    System.arraycopy(areas, 0, area, 0, runs.count());
    above = runs;
  }

  private static int root(int[] parent, int of) {
    int at = of;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  private static void join(int[] parent, long[] area, int one, int other) {
    int a = root(parent, one);
    int b = root(parent, other);
    if (a != b) {
      parent[a] = b;
      area[b] += area[a];
    }
  }

  private void ended(long points) {
    int bin = (int) (points * point / Fine.SPECK_STEP);
    if (bin < BINS) {
      byArea[bin]++;
    }
  }

  /** How many there are of each area, in steps of {@link Fine#SPECK_STEP}. */
  List<Long> byArea() {
    return LongStream.of(byArea).boxed().toList();
  }
}
