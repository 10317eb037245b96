package strikeoff.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/**
 * Another program's arithmetic, asked over a grid of values. It shares no code with ours, so the
 * two agree only where both are right, or wrong alike.
 *
 * <p>A topic's oracle test offers its oracles by a method {@code static List<Oracle> oracles()} and
 * is named in {@link CheckTables}.
 */
public final class Oracle {

  private final String library;
  private final String quantity;
  private final String grid;
  private final double tolerance;
  private final boolean relative;
  private final List<Point> points = new ArrayList<>();

  /** One point of the grid. */
  private record Point(String at, double ours, double theirs) {}

  private Oracle(String library, String quantity, String grid, double tolerance, boolean relative) {
    this.library = library;
    this.quantity = quantity;
    this.grid = grid;
    this.tolerance = tolerance;
    this.relative = relative;
  }

  /** Held to a difference in the quantity's own unit. */
  public static Oracle within(double tolerance, String library, String quantity, String grid) {
    return new Oracle(library, quantity, grid, tolerance, false);
  }

  /** Held to a difference as a share of the library's value. */
  public static Oracle withinShare(double share, String library, String quantity, String grid) {
    return new Oracle(library, quantity, grid, share, true);
  }

  public Oracle point(String at, double ours, double theirs) {
    points.add(new Point(at, ours, theirs));
    return this;
  }

  /** The largest difference over the grid; not a number if any value is none. */
  public double largest() {
    double largest = 0;
    for (Point point : points) {
      double off = off(point);
      if (Double.isNaN(off)) {
        return off;
      }
      largest = Math.max(largest, off);
    }
    return largest;
  }

  private double off(Point point) {
    double off = Math.abs(point.ours - point.theirs);
    return relative && off > 0 ? off / Math.abs(point.theirs) : off;
  }

  public void assertHolds() {
    assertThat(points).as("%s asked about %s", library, quantity).hasSizeGreaterThan(20);
    for (Point point : points) {
      assertThat(off(point))
          .as("%s at %s: %s here, %s by %s", quantity, point.at, point.ours, point.theirs, library)
          .isLessThanOrEqualTo(tolerance);
    }
  }

  public String library() {
    return library;
  }

  public String quantity() {
    return quantity;
  }

  public String grid() {
    return grid;
  }

  public int size() {
    return points.size();
  }

  public double tolerance() {
    return tolerance;
  }

  /** True if differences are shares of the library's value. */
  public boolean relative() {
    return relative;
  }

  @Override
  public String toString() {
    return quantity + " by " + library;
  }
}
