package strikeoff.artwork;

/**
 * Weighted sums by which a film is laid by least squares, about their means: a strip of one width
 * all round is free.
 */
final class EdgeMoments {

  /**
   * Edges that run so much one way, by the spread of their way out, say nothing of the other: a few
   * ends and corners do not tell how far what is long lies off along itself.
   */
  private static final double ONE_WAY = 0.02;

  /**
   * What is so nearly round, of its own size, says nothing of a turn or, with its strip, a size.
   */
  private static final double ROUND = 0.003;

  private static final int X = 0;
  private static final int Y = 1;
  private static final int SIZE = 2;
  private static final int TURN = 3;
  private static final int STRIP = 4;
  private static final int RIGHT = 5;
  private static final int DOWN = 6;
  private static final int ALL = 7;

  private double weight;
  private final double[] sums = new double[ALL];
  private final double[][] products = new double[ALL][ALL];

  /**
   * Adds a point of an edge.
   *
   * @param w for how long an edge it stands
   * @param right of the middle of the film, in mm
   * @param down from there
   * @param outX the way out there, to the right
   * @param outY the same down
   * @param strip what lies between it and the other's edge
   */
  void add(double w, double right, double down, double outX, double outY, double strip) {
    double[] values = {
      outX, outY, right * outX + down * outY, right * outY - down * outX, strip, right, down
    };
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

  /**
   * Lays it.
   *
   * @param size true if it may be made larger or smaller
   * @param turn true if it may be turned
   */
  FilmPose moved(FilmPose pose, boolean size, boolean turn) {
    if (weight == 0) {
      return pose;
    }
    double[] still = new double[2];
    double[] sized = size ? left(SIZE) : still;
    double[] turned = turn ? left(TURN) : still;
    // What is left of each once the move that goes with it is taken out.
    double[] more =
        solved(
            size ? left(SIZE, SIZE, sized) : 0,
            size && turn ? left(SIZE, TURN, sized) : 0,
            turn ? left(TURN, TURN, turned) : 0,
            size ? left(SIZE, STRIP, sized) : 0,
            turn ? left(TURN, STRIP, turned) : 0,
            ROUND * (about(RIGHT, RIGHT) + about(DOWN, DOWN)));
    double[] by =
        move(
            about(X, STRIP) - more[0] * about(X, SIZE) - more[1] * about(X, TURN),
            about(Y, STRIP) - more[0] * about(Y, SIZE) - more[1] * about(Y, TURN));
    return pose.and(by[X], by[Y], more[0], more[1]);
  }

  private double[] left(int of) {
    return move(about(X, of), about(Y, of));
  }

  private double left(int of, int to, double[] move) {
    return about(of, to) - move[X] * about(X, to) - move[Y] * about(Y, to);
  }

  private double[] move(double x, double y) {
    return solved(about(X, X), about(X, Y), about(Y, Y), x, y, ONE_WAY);
  }

  /** Solves for two unknowns, the ways left out of which the edges say nothing. */
  private static double[] solved(double a, double b, double c, double x, double y, double least) {
    double middle = (a + c) / 2;
    double apart = Math.hypot((a - c) / 2, b);
    double angle = Math.atan2(2 * b, a - c) / 2;
    double[] solved = new double[2];
    for (double way : new double[] {middle + apart, middle - apart}) {
      if (way >= least) {
        double along = Math.cos(angle) * x + Math.sin(angle) * y;
        solved[0] += Math.cos(angle) * along / way;
        solved[1] += Math.sin(angle) * along / way;
      }
      angle += Math.PI / 2;
    }
    return solved;
  }
}
