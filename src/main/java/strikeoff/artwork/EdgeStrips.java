package strikeoff.artwork;

/**
 * Follows what lies between the edges of one film and another's, point by point.
 *
 * @param mine whose edges are followed
 * @param along mm from one point of a row to the next
 * @param across mm from one row to the next
 * @param leftRight true if the one whose edges are followed is turned so that left becomes right
 * @param topBottom true if its top becomes its bottom
 */
record EdgeStrips(
    Bits mine, Bits other, double along, double across, boolean leftRight, boolean topBottom) {

  /** Steps across strips, in mm; within one they are followed point by point. */
  private static final double STRIDE = 0.15;

  /**
   * The strip between the edge of one and the other's, straight out or in from a point.
   *
   * @param there where it is laid: x, y, and the two parts of the way out
   * @return ground, or a lap below zero, in mm; not a number where there is none
   */
  double strip(double[] points, int at, double[] there) {
    double x = there[0];
    double y = there[1];
    double outX = there[2];
    double outY = there[3];
    double point = Math.min(along, across);
    boolean covered = is(other, x - outX * point / 2, y - outY * point / 2);
    double sign = covered ? -1 : 1;
    double stride = Math.max(point, STRIDE);
    for (double far = point / 2; far <= EdgeFitting.REACH; far += stride) {
      double by = sign * far;
      if (is(other, x + outX * by, y + outY * by) != covered) {
        return sign * first(covered, x, y, outX * sign, outY * sign, far - stride, far);
      }
      // Where this film ends itself, or begins again, nothing is between its edge and the other.
      if (far > 2 * point
          && isMine(points[at] + points[at + 2] * by, points[at + 1] + points[at + 3] * by)
              != covered) {
        break;
      }
    }
    return Double.NaN;
  }

  /** Where between two places the other begins or ends, to a point. */
  private double first(
      boolean covered, double x, double y, double toX, double toY, double from, double to) {
    double point = Math.min(along, across);
    double far = to;
    while (far - point > Math.max(0, from)
        && is(other, x + toX * (far - point), y + toY * (far - point)) != covered) {
      far -= point;
    }
    return far - point / 2;
  }

  /** True if the film goes on inwards from a point, and doesn't begin again outwards. */
  boolean isOfArea(double[] points, int at) {
    double stride = Math.max(Math.min(along, across), STRIDE);
    for (double far = stride; far <= EdgeFitting.REACH; far += stride) {
      double x = points[at + 2] * far;
      double y = points[at + 3] * far;
      if (!isMine(points[at] - x, points[at + 1] - y)
          || isMine(points[at] + x, points[at + 1] + y)) {
        return false;
      }
    }
    return true;
  }

  private boolean isMine(double x, double y) {
    return is(
        mine, leftRight ? mine.columns() * along - x : x, topBottom ? mine.rows() * across - y : y);
  }

  private boolean is(Bits bits, double x, double y) {
    return x >= 0 && y >= 0 && bits.get((int) (x / along), (int) (y / across));
  }
}
