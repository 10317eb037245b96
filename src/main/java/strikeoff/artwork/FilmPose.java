package strikeoff.artwork;

/**
 * How a film lies: first made larger from the middle, and then moved.
 *
 * @param x to the right, in mm
 * @param y down
 */
record FilmPose(double x, double y, double scale) {

  static final FilmPose AS_IT_IS = new FilmPose(0, 0, 1);

  /** This, and then so much more. */
  FilmPose and(double moreX, double moreY, double larger) {
    return new FilmPose((1 + larger) * x + moreX, (1 + larger) * y + moreY, (1 + larger) * scale);
  }

  /** How far a place so far from the middle comes to lie from where another has it, at most. */
  double apart(FilmPose other, double half) {
    return Math.hypot(x - other.x, y - other.y) + Math.abs(scale - other.scale) * half;
  }
}
