package strikeoff.plan;

import java.util.Arrays;

/** A convex shape by its corners, to be cut along and across (Sutherland and Hodgman, 1974). */
final class Convex {

  private final double[] x;
  private final double[] y;

  Convex(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  boolean isEmpty() {
    return x.length < 3;
  }

  double leastX() {
    return Arrays.stream(x).min().orElse(0);
  }

  double mostX() {
    return Arrays.stream(x).max().orElse(-1);
  }

  double leastY() {
    return Arrays.stream(y).min().orElse(0);
  }

  double mostY() {
    return Arrays.stream(y).max().orElse(-1);
  }

  /** What of it lies from there on. */
  Convex alongFrom(double at) {
    return cut(x, y, at, 1, false);
  }

  Convex alongTo(double at) {
    return cut(x, y, at, -1, false);
  }

  Convex acrossFrom(double at) {
    return cut(y, x, at, 1, true);
  }

  Convex acrossTo(double at) {
    return cut(y, x, at, -1, true);
  }

  /**
   * @param of the coordinate that is cut
   * @param other the one beside it
   * @param way 1 keeps what is larger, −1 what is smaller
   */
  private static Convex cut(double[] of, double[] other, double at, int way, boolean swapped) {
    // One more at the most of what is truly convex; rounded corners may bend the other way.
    double[] kept = new double[2 * of.length];
    double[] beside = new double[2 * of.length];
    int n = 0;
    for (int i = 0; i < of.length; i++) {
      int before = i == 0 ? of.length - 1 : i - 1;
      double now = way * (of[i] - at);
      double last = way * (of[before] - at);
      if (now > 0 && last < 0 || now < 0 && last > 0) {
        kept[n] = at;
        beside[n++] = other[before] + (other[i] - other[before]) * last / (last - now);
      }
      if (now >= 0) {
        kept[n] = of[i];
        beside[n++] = other[i];
      }
    }
    double[] a = Arrays.copyOf(kept, n);
    double[] b = Arrays.copyOf(beside, n);
    return swapped ? new Convex(b, a) : new Convex(a, b);
  }

  /** From where to where it reaches all over a strip that it lies in; nowhere if it doesn't. */
  double[] fullAcross(double near, double far) {
    double[] below = reach(near);
    double[] above = reach(far);
    return new double[] {Math.max(below[0], above[0]), Math.min(below[1], above[1])};
  }

  private double[] reach(double at) {
    double[] reach = {Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int i = 0; i < x.length; i++) {
      if (Math.abs(y[i] - at) < 1e-9) {
        reach[0] = Math.min(reach[0], x[i]);
        reach[1] = Math.max(reach[1], x[i]);
      }
    }
    return reach;
  }

  double area() {
    double twice = 0;
    for (int i = 0; i < x.length; i++) {
      int next = i + 1 == x.length ? 0 : i + 1;
      twice += (x[i] - x[0]) * (y[next] - y[0]) - (x[next] - x[0]) * (y[i] - y[0]);
    }
    return Math.abs(twice) / 2;
  }
}
