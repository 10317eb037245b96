package strikeoff.artwork;

import java.util.Arrays;

/**
 * A part of a picture that goes on from row to row as one run each: a line or a gap, as far as
 * nothing branches off.
 */
final class Stroke {

  private int firstRow;
  private int rows;
  private int[] from = new int[2];
  private int[] to = new int[2];

  Stroke(int firstRow) {
    this.firstRow = firstRow;
  }

  void add(int first, int end) {
    if (rows == from.length) {
      from = Arrays.copyOf(from, 2 * rows);
      to = Arrays.copyOf(to, 2 * rows);
    }
    from[rows] = first;
    to[rows++] = end;
  }

  /** Its first rows, as long as it doesn't go on without them. */
  Stroke first(int some) {
    Stroke first = new Stroke(firstRow);
    first.rows = some;
    first.from = from;
    first.to = to;
    return first;
  }

  /** Goes on with its last rows alone, where the others were: long strokes take no more room. */
  void keep(int last) {
    System.arraycopy(from, rows - last, from, 0, last);
    System.arraycopy(to, rows - last, to, 0, last);
    firstRow += rows - last;
    rows = last;
  }

  int rows() {
    return rows;
  }

  int firstRow() {
    return firstRow;
  }

  /** Points of one of its rows. */
  int length(int row) {
    return to[row] - from[row];
  }

  /** The middle of one of its rows, in columns. */
  double middle(int row) {
    return (from[row] + to[row]) / 2.0;
  }
}
