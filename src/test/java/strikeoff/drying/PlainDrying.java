package strikeoff.drying;

import java.util.Arrays;
import strikeoff.drying.Dried.Points;

/** Drying times for tests that ask nothing of how they come about. */
public final class PlainDrying {

  private static final Points POINTS =
      new Points(Drying.point(0.1), Drying.point(0.5), Drying.point(0.9));

  private PlainDrying() {}

  /** The same second on every day. */
  public static Dried at(long second) {
    return at(second, second, second);
  }

  /** Quick for the quicker days, ordinary for those between, slow for the slower ones. */
  public static Dried at(long quick, long ordinary, long slow) {
    int[] days = new int[Days.COUNT];
    Arrays.fill(days, (int) ordinary);
    Arrays.fill(days, 0, POINTS.quick() + 1, (int) quick);
    Arrays.fill(days, POINTS.slow(), days.length, (int) slow);
    return new Dried(days, POINTS, 0);
  }
}
