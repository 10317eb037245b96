package strikeoff.artwork;

import java.util.Optional;
import strikeoff.plan.Artwork.Finest;
import strikeoff.units.Length;

/**
 * Edges at which two films meet to a point: neither laps the other by more, nor leaves more ground.
 * On a raster an edge that only touches is a point of lap here and a point of ground there.
 */
final class Butts {

  /** An edge is followed as a run of so many points on either side of it. */
  static final int REACH = 2;

  /** A row goes so far through a slanting lap of a point at most. */
  static final int MOST = 2;

  /** Points of the longest run of an edge. */
  static final int WIDEST = 2 * REACH + MOST;

  private final double along;
  private final double across;
  private double length;
  private double longest;

  /** Where the longest is, in columns and rows. */
  private double x;

  private double y;

  /**
   * @param along mm from one point of a row to the next
   * @param across mm from one row to the next
   */
  Butts(double along, double across) {
    this.along = along;
    this.across = across;
  }

  /**
   * Adds a row's run of an edge, longer by what it laps and shorter by what it leaves bare.
   *
   * @param from where the lap or the ground begins
   * @param to where it ends
   * @param lap its points, below zero if they are bare
   * @return where the run ends
   */
  static int add(RowRuns runs, int from, int to, int lap) {
    int inwards = Math.max(0, -lap);
    runs.add(from - REACH + inwards, to + REACH - inwards);
    return to + REACH - inwards;
  }

  /** Takes an edge, and counts of it what is met to a point over half a millimetre either way. */
  void take(Stroke edge) {
    int rows = edge.rows();
    int[] sums = new int[rows + 1];
    for (int row = 0; row < rows; row++) {
      sums[row + 1] = sums[row] + edge.length(row) - 2 * REACH;
    }
    int half = Math.max(2, (int) (Widths.KEPT / 2 / across));
    int first = 0;
    double stretch = 0;
    for (int row = 0; row <= rows; row++) {
      double counted = row < rows ? counted(edge, sums, row, half) : 0;
      if (counted == 0) {
        ends(edge, first, row, stretch);
        first = row + 1;
        stretch = 0;
      }
      stretch += counted;
      length += counted;
    }
  }

  /** How much of an edge one of its rows is, in mm; nothing where it laps, gapes or is slanted. */
  private double counted(Stroke edge, int[] sums, int row, int half) {
    int low = Math.max(0, row - half);
    int high = Math.min(edge.rows() - 1, row + half);
    double slope = (edge.middle(high) - edge.middle(low)) * along / ((high - low) * across);
    double slant = Math.hypot(1, slope);
    double points = (double) Math.abs(sums[high + 1] - sums[low]) / (high + 1 - low) / slant;
    if (points > 1 || Math.abs(slope) > Widths.STEEPEST) {
      return 0;
    }
    // What both ways measure counts half.
    return across * slant * (Math.abs(slope) >= 1 / Widths.STEEPEST ? 0.5 : 1);
  }

  private void ends(Stroke edge, int first, int end, double stretch) {
    if (stretch > longest) {
      int middle = (first + end) / 2;
      longest = stretch;
      x = edge.middle(middle);
      y = edge.firstRow() + middle + 0.5;
    }
  }

  /**
   * All of a picture's.
   *
   * @param upright those along the rows
   * @param flat those of the same picture turned
   * @param rows of the picture
   * @return empty if there are none
   */
  static Optional<Finest> of(Butts upright, Butts flat, int rows) {
    double length = upright.length + flat.length;
    boolean standing = upright.longest >= flat.longest;
    double column = standing ? upright.x : flat.y;
    double row = standing ? upright.y : flat.x;
    return length == 0
        ? Optional.empty()
        : Optional.of(
            new Finest(
                new Length(0),
                new Length(length),
                new Length(column * upright.along),
                new Length((rows - row) * upright.across)));
  }
}
