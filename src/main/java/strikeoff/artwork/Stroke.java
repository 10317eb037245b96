package strikeoff.artwork;

import java.util.Arrays;

/**
 * A part of a picture that goes on from row to row as one run each: a line or a gap, as far as
 * nothing branches off.
 */
final class Stroke {

  private int firstRow;
  private int rows;

  /** First column and the one after the last, by turns. */
  private int[] ends = new int[4];

  Stroke(int firstRow) {
    this.firstRow = firstRow;
  }

  void add(int first, int end) {
    if (2 * rows == ends.length) {
      ends = Arrays.copyOf(ends, 4 * rows);
    }
    ends[2 * rows] = first;
    ends[2 * rows++ + 1] = end;
  }

  /** Its first rows, as long as it doesn't go on without them. */
  Stroke first(int some) {
    Stroke first = new Stroke(firstRow);
    first.rows = some;
    first.ends = ends;
    return first;
  }

  /** Goes on with its last rows alone, where the others were: long strokes take no more room. */
  void keep(int last) {
    System.arraycopy(ends, 2 * (rows - last), ends, 0, 2 * last);
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
    return ends[2 * row + 1] - ends[2 * row];
  }

  /** The middle of one of its rows, in columns. */
  double middle(int row) {
    return (ends[2 * row] + ends[2 * row + 1]) / 2.0;
  }
}
