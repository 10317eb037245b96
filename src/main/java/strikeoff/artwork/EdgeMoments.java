package strikeoff.artwork;

/**
 * Weighted sums by which a film is laid by least squares, about their means: a strip of one width
 * all round is free.
 */
final class EdgeMoments {

  /** Edges that run so much one way, by the spread of their way out, say nothing of the other. */
  private static final double ONE_WAY = 0.003;

  private static final int X = 0;
  private static final int Y = 1;
  private static final int SIZE = 2;
  private static final int STRIP = 3;
  private static final int ALL = 4;

  private double weight;
  private final double[] sums = new double[ALL];
  private final double[][] products = new double[ALL][ALL];

  void add(double w, double... values) {
    weight += w;
    for (int i = 0; i < ALL; i++) {
      sums[i] += w * values[i];
      for (int j = 0; j <= i; j++) {
        products[i][j] += w * values[i] * values[j];
      }
    }
  }

  private double about(int i, int j) {
    double product = products[Math.max(i, j)][Math.min(i, j)];
    return (product - sums[i] * sums[j] / weight) / weight;
  }

  FilmPose moved(FilmPose pose, boolean size, double half) {
    if (weight == 0) {
      return pose;
    }
    double larger = 0;
    if (size) {
      double[] of = solved(about(X, SIZE), about(Y, SIZE));
      double left = about(SIZE, SIZE) - of[X] * about(X, SIZE) - of[Y] * about(Y, SIZE);
      double strip = about(SIZE, STRIP) - of[X] * about(X, STRIP) - of[Y] * about(Y, STRIP);
      larger = left / half / half < ONE_WAY ? 0 : strip / left;
    }
    double[] by =
        solved(
            about(X, STRIP) - larger * about(X, SIZE), about(Y, STRIP) - larger * about(Y, SIZE));
    return pose.and(by[X], by[Y], larger);
  }

  /** Solves for a move, the ways left out of which the edges say nothing. */
  private double[] solved(double x, double y) {
    double a = about(X, X);
    double b = about(X, Y);
    double c = about(Y, Y);
    double middle = (a + c) / 2;
    double apart = Math.hypot((a - c) / 2, b);
    double angle = Math.atan2(2 * b, a - c) / 2;
    double[] solved = new double[2];
    for (double way : new double[] {middle + apart, middle - apart}) {
      if (way >= ONE_WAY) {
        double along = Math.cos(angle) * x + Math.sin(angle) * y;
        solved[X] += Math.cos(angle) * along / way;
        solved[Y] += Math.sin(angle) * along / way;
      }
      angle += Math.PI / 2;
    }
    return solved;
  }
}
