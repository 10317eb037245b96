package strikeoff.artwork;

import java.util.Arrays;
import java.util.function.IntPredicate;
import strikeoff.plan.PrintedCells;

/**
 * Where two films of one grid come near to each other, by their cells: only there can they lap,
 * touch, or leave a gap.
 */
final class FilmsNear {

  private final int rows;
  private final int along;
  private final int across;

  /** Stretches of rows by their row of cells, the near one first. */
  private final int[][] inRows;

  /** Stretches of columns by their column of cells. */
  private final int[][] inColumns;

  private FilmsNear(int rows, int along, int across, int[][] inRows, int[][] inColumns) {
    this.rows = rows;
    this.along = along;
    this.across = across;
    this.inRows = inRows;
    this.inColumns = inColumns;
  }

  /** All over two films of so many points. */
  static FilmsNear everywhere(int columns, int rows) {
    return new FilmsNear(rows, columns, rows, new int[][] {{0, columns}}, new int[][] {{0, rows}});
  }

  /**
   * Where both print within a reach.
   *
   * @param columns points along
   * @param rows points across
   * @param reach in mm
   */
  static FilmsNear of(PrintedCells one, PrintedCells other, int columns, int rows, double reach) {
    boolean[] near = grown(one, reach);
    boolean[] others = grown(other, reach);
    for (int i = 0; i < near.length; i++) {
      near[i] &= others[i];
    }
    int wide = one.columns();
    int high = one.rows();
    int along = wide == 1 ? columns : (int) Math.round(one.cellLength() / one.length() * columns);
    int across = high == 1 ? rows : (int) Math.round(one.cellWidth() / one.width() * rows);
    int[][] inRows = new int[high][];
    for (int row = 0; row < high; row++) {
      int at = row * wide;
      inRows[row] = stretches(wide, i -> near[at + i], 0, along, columns);
    }
    // The first row of a picture is the far one: its cells begin with what is left over.
    int first = rows - high * across;
    int[][] inColumns = new int[wide][];
    for (int column = 0; column < wide; column++) {
      int at = column;
      inColumns[column] =
          stretches(high, i -> near[(high - 1 - i) * wide + at], first, across, rows);
    }
    return new FilmsNear(rows, along, across, inRows, inColumns);
  }

  /** Which cells lie within so many mm of one that prints, or a little further. */
  private static boolean[] grown(PrintedCells cells, double reach) {
    int wide = cells.columns();
    int high = cells.rows();
    boolean[] along = new boolean[wide * high];
    int far = 1 + (int) Math.ceil(reach / cells.cellLength());
    for (int row = 0; row < high; row++) {
      int y = row;
      grow(wide, far, i -> cells.share(i, y) > 0, along, row * wide, 1);
    }
    boolean[] grown = new boolean[wide * high];
    int further = 1 + (int) Math.ceil(reach / cells.cellWidth());
    for (int column = 0; column < wide; column++) {
      int x = column;
      grow(high, further, i -> along[i * wide + x], grown, column, wide);
    }
    return grown;
  }

  private static void grow(int count, int by, IntPredicate is, boolean[] to, int first, int step) {
    int last = -2 * by - 1;
    for (int i = 0; i < count + by; i++) {
      last = i < count && is.test(i) ? i : last;
      int middle = i - by;
      if (middle >= 0 && last >= middle - by) {
        to[first + middle * step] = true;
      }
    }
  }

  /** Whole words of 64 points in which some cells of a row lie; beginnings and ends by turns. */
  private static int[] stretches(int cells, IntPredicate is, int first, int cell, int points) {
    int[] ends = new int[2 * cells];
    int n = 0;
    for (int i = 0; i < cells; i++) {
      if (is.test(i)) {
        int from = Math.max(0, first + i * cell) & -Long.SIZE;
        int to = Math.min(points, first + (i + 1) * cell + Long.SIZE - 1 & -Long.SIZE);
        if (n > 0 && from <= ends[n - 1]) {
          ends[n - 1] = to;
        } else {
          ends[n++] = from;
          ends[n++] = to;
        }
      }
    }
    return Arrays.copyOf(ends, n);
  }

  boolean isNowhere() {
    return Arrays.stream(inRows).allMatch(row -> row.length == 0);
  }

  /** The stretches of a row: first column, and the one after the last, by turns. */
  int[] inRow(int y) {
    return inRows[(rows - 1 - y) / across];
  }

  /** The same of a column: first row, and the one after the last. */
  int[] inColumn(int x) {
    return inColumns[x / along];
  }
}
