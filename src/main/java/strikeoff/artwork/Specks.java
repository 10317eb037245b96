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
  private long[] areas = new long[0];
  private int[] whole = new int[0];

  /**
   * @param point area of a point, in mm²
   */
  Specks(double point) {
    this.point = point;
  }

  /** The next row, which is kept until the one after it. */
  void row(RowRuns runs) {
    int before = above.count();
    int[] parent = new int[before + runs.count()];
    long[] area = Arrays.copyOf(areas, parent.length);
    for (int i = 0; i < before; i++) {
      parent[i] = whole[i];
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
    boolean[] goesOn = new boolean[parent.length];
    for (int i = before; i < parent.length; i++) {
      goesOn[root(parent, i)] = true;
    }
    for (int i = 0; i < before; i++) {
      if (parent[i] == i && !goesOn[i]) {
        ended(area[i]);
      }
    }
    // Wholes are numbered by the first of their runs in this row.
    int[] first = new int[parent.length];
    Arrays.fill(first, -1);
    areas = new long[runs.count()];
    whole = new int[runs.count()];
    for (int i = 0; i < runs.count(); i++) {
      int root = root(parent, before + i);
      first[root] = first[root] < 0 ? i : first[root];
      whole[i] = first[root];
      areas[first[root]] = area[root];
    }
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
