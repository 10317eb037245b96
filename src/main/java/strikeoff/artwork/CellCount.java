package strikeoff.artwork;

import java.util.Arrays;
import strikeoff.plan.PrintedCells;
import strikeoff.units.Pair;

/** Counts the points that print, cell by cell. */
final class CellCount {

  /** About how long and wide a cell is, in mm. */
  private static final double CELL = 1;

  /** A cell has more points along than that: a coarse film has fewer of them. */
  private static final int FEWEST_POINTS = 4;

  /** So many a film at most: a square metre. */
  private static final double MOST_CELLS = 1_000_000;

  private CellCount() {}

  /**
   * A film's cells.
   *
   * @param size of the rectangle that it fills
   * @param wrong true if it is seen through its back
   */
  static PrintedCells of(Bits bits, Pair size, boolean wrong) {
    double length = size.along().mm();
    double width = size.across().mm();
    double side = Math.max(CELL, Math.sqrt(length * width / MOST_CELLS));
    int along = points(side, length, bits.columns());
    int across = points(side, width, bits.rows());
    int columns = (bits.columns() + along - 1) / along;
    int rows = (bits.rows() + across - 1) / across;
    byte[] shares = new byte[columns * rows];
    int[] counts = new int[columns];
    for (int row = 0; row < rows; row++) {
      int near = bits.rows() - row * across;
      int far = Math.max(0, near - across);
      Arrays.fill(counts, 0);
      for (int y = far; y < near; y++) {
        count(bits, y, along, wrong, counts);
      }
      for (int column = 0; column < columns; column++) {
        int wide = Math.min(along, bits.columns() - column * along);
        shares[row * columns + column] = share(counts[column], (long) wide * (near - far));
      }
    }
    return new PrintedCells(
        length, width, length / bits.columns() * along, width / bits.rows() * across, shares);
  }

  /** How many points a cell's side has. */
  private static int points(double side, double length, int points) {
    double wanted = Math.max(FEWEST_POINTS, side / length * points);
    return (int) Math.max(1, Math.min(points, Math.round(wanted)));
  }

  private static void count(Bits bits, int y, int along, boolean wrong, int[] counts) {
    int columns = bits.columns();
    if (bits.next(0, y, true) == columns) {
      return;
    }
    for (int column = 0; column < counts.length; column++) {
      int left = column * along;
      int right = Math.min(columns, left + along);
      counts[column] +=
          wrong ? bits.count(columns - right, columns - left, y) : bits.count(left, right, y);
    }
  }

  /** Nothing and all are kept as they are; what lies between is rounded to what lies between. */
  private static byte share(int open, long points) {
    if (open == 0 || open == points) {
      return (byte) (open == 0 ? 0 : PrintedCells.FULL);
    }
    long share = Math.round((double) open / points * PrintedCells.FULL);
    return (byte) Math.max(1, Math.min(PrintedCells.FULL - 1, share));
  }
}
