package strikeoff.artwork;

import java.util.ArrayList;
import java.util.List;

/**
 * A line drawn by hand, as points close to each other, in millimetres from a film's left and its
 * upper edge. It is reckoned by sums, products and square roots alone: the same everywhere.
 */
final class Curve {

  /** Steps of a bend: those of one half a metre long are a quarter of a millimetre. */
  private static final int STEPS = 400;

  private final List<double[]> points = new ArrayList<>();

  private Curve(double x, double y) {
    points.add(new double[] {x, y});
  }

  static Curve from(double x, double y) {
    return new Curve(x, y);
  }

  /** Straight on to a point. */
  Curve to(double x, double y) {
    double[] last = last();
    return to(last[0], last[1], x, y, x, y);
  }

  /** On to a point by a cubic Bézier curve with these two handles. */
  Curve to(double x1, double y1, double x2, double y2, double x, double y) {
    double[] last = last();
    for (int i = 1; i <= STEPS; i++) {
      double t = i / (double) STEPS;
      double s = 1 - t;
      double a = s * s * s;
      double b = 3 * s * s * t;
      double c = 3 * s * t * t;
      double d = t * t * t;
      points.add(
          new double[] {
            a * last[0] + b * x1 + c * x2 + d * x, a * last[1] + b * y1 + c * y2 + d * y
          });
    }
    return this;
  }

  private double[] last() {
    return points.get(points.size() - 1);
  }

  List<double[]> points() {
    return points;
  }
}
