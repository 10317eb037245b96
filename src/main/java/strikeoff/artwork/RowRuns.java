package strikeoff.artwork;

import java.util.Arrays;

/** Where the points of one row are set, run by run: first column, and the one after the last. */
final class RowRuns {

  private int count;
  private int[] from = new int[64];
  private int[] to = new int[64];

  int count() {
    return count;
  }

  int from(int run) {
    return from[run];
  }

  int to(int run) {
    return to[run];
  }

  void clear() {
    count = 0;
  }

  /** Takes a row's runs in the place of those of the row before. */
  void of(Bits bits, int y) {
    count = 0;
    int x = bits.next(0, y, true);
    while (x < bits.columns()) {
      int end = bits.next(x, y, false);
      add(x, end);
      x = end < bits.columns() ? bits.next(end, y, true) : end;
    }
  }

  /** Takes what lies between the runs of a row: not what lies outside them. */
  void between(RowRuns runs) {
    count = 0;
    for (int i = 1; i < runs.count; i++) {
      add(runs.to[i - 1], runs.from[i]);
    }
  }

  void add(int first, int end) {
    if (count == from.length) {
      from = Arrays.copyOf(from, 2 * count);
      to = Arrays.copyOf(to, 2 * count);
    }
    from[count] = first;
    to[count++] = end;
  }
}
