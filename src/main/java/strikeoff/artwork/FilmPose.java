package strikeoff.artwork;

/**
 * How a film lies: first made larger and turned about its middle, and then moved.
 *
 * @param x to the right, in mm
 * @param y down
 * @param turn in radians, clockwise
 */
record FilmPose(double x, double y, double scale, double turn) {

  static final FilmPose AS_IT_IS = new FilmPose(0, 0, 1, 0);

  /** Numbers of a point that is laid. */
  static final int LAID = 4;

  /** This, and then so much more. */
  FilmPose and(double moreX, double moreY, double larger, double turned) {
    double by = 1 + larger;
    double cos = by * Math.cos(turned);
    double sin = by * Math.sin(turned);
    return new FilmPose(
        cos * x - sin * y + moreX, sin * x + cos * y + moreY, by * scale, turn + turned);
  }

  /** How far a place so far from the middle comes to lie from where another has it, at most. */
  double apart(FilmPose other, double half) {
    return Math.hypot(x - other.x, y - other.y)
        + Math.hypot(scale - other.scale, turn - other.turn) * half;
  }

  /**
   * Lays a point of an edge.
   *
   * @param points of the edge
   * @param at where the point stands among them
   * @param length of the film, in mm
   * @param width of it
   * @param there takes x, y and the two parts of the way out
   */
  void lay(double[] points, int at, double length, double width, double[] there) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    double right = (points[at] - length / 2) * scale;
    double down = (points[at + 1] - width / 2) * scale;
    there[0] = length / 2 + cos * right - sin * down + x;
    there[1] = width / 2 + sin * right + cos * down + y;
    there[2] = cos * points[at + 2] - sin * points[at + 3];
    there[3] = sin * points[at + 2] + cos * points[at + 3];
  }
}
