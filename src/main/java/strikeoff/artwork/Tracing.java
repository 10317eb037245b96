package strikeoff.artwork;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import strikeoff.document.GivenUp;
import strikeoff.plan.Traced;

/**
 * Follows the edges of what a film prints, and straightens them as far as its area allows: for a
 * page, where a line is to be as wide as it prints and a film need not be exposed from it.
 *
 * <p>Corners are left out while none that is left out lies farther off the edge than a tolerance
 * (Ramer 1972, Douglas and Peucker 1973). The tolerance is made smaller until the area is that of
 * the film to one part in a hundred.
 */
final class Tracing {

  /** More runs are a texture. A2 full of lines has a twentieth of them. */
  private static final long MOST_RUNS = 1_000_000;

  /** More corners are no drawing that a page can hold: about 100 KB of it. */
  private static final int MOST_CORNERS = 20_000;

  /** It is drawn again while it is off by more than the first, and not at all beyond the other. */
  private static final double AREA_OFF = 0.01;

  private static final double AREA_FAR_OFF = 0.02;

  /** Points looked at once more for each corner: a drawing wants a hundredth of them. */
  private static final long MOST_LOOKS = 500_000_000;

  /** Points after which a corner is kept: else the teeth of a comb are looked at again for each. */
  private static final int LONGEST = 2_000;

  /**
   * How far off a corner may be left out, and the steps that those left are rounded to, in mm. On a
   * page a metre of cloth is a thousand points wide or less; lines are seen by their area.
   */
  private static final double[][] FINER = {
    {0.2, 0.1},
    {0.14, 0.1},
    {0.1, 0.1},
    {0.07, 0.05},
    {0.05, 0.05},
    {0.03, 0.02},
    {0.02, 0.01},
    {0.01, 0.01}
  };

  private final Bits bits;
  private final boolean wrong;
  private final double along;
  private final double across;
  private long looks;

  private Tracing(Bits bits, double along, double across, boolean wrong) {
    this.bits = bits;
    this.along = along;
    this.across = across;
    this.wrong = wrong;
  }

  /**
   * Traces a film.
   *
   * @param along mm from one point of a row to the next, on the cloth
   * @param across mm from one row to the next
   * @param wrong true if it is seen through its back
   * @return empty if it prints nothing, or is a texture
   */
  static Optional<Traced> of(Bits bits, double along, double across, boolean wrong) {
    long open = bits.count();
    return open == 0 || Math.max(bits.runs(), bits.runsAcross()) > MOST_RUNS
        ? Optional.empty()
        : new Tracing(bits, along, across, wrong).straightened(open * along * across);
  }

  private Optional<Traced> straightened(double area) {
    List<int[]> edges = edges();
    Traced best = null;
    for (double[] finer : FINER) {
      Traced traced = straightened(edges, finer[0], finer[1]);
      if (traced.corners() > MOST_CORNERS || looks > MOST_LOOKS) {
        break;
      }
      best = traced;
      if (Math.abs(traced.area() - area) <= AREA_OFF * area) {
        break;
      }
    }
    return Optional.ofNullable(best)
        .filter(traced -> Math.abs(traced.area() - area) <= AREA_FAR_OFF * area);
  }

  private Traced straightened(List<int[]> edges, double tolerance, double step) {
    List<int[]> rings = new ArrayList<>();
    for (int[] edge : edges) {
      GivenUp.ifAsked();
      int[] ring = new Ring(edge).straightened(tolerance, step);
      if (Traced.twiceArea(ring) != 0) {
        rings.add(ring);
      }
    }
    return new Traced(step, rings.toArray(int[][]::new));
  }

  /** The middles of all sides between points that print and points that don't, ring by ring. */
  private List<int[]> edges() {
    List<int[]> edges = new ArrayList<>();
    Bits seen = new Bits(bits.columns(), bits.rows());
    for (int y = 0; y < bits.rows(); y++) {
      GivenUp.ifAsked();
      for (int x = bits.next(0, y, true); x < bits.columns(); ) {
        if (!seen.get(x, y)) {
          edges.add(edge(x, y, seen));
        }
        int end = bits.next(x, y, false);
        x = end < bits.columns() ? bits.next(end, y, true) : end;
      }
    }
    return edges;
  }

  /**
   * Goes round once, what prints on the right hand, from the left side of a point upwards.
   *
   * @return x and y in half points
   */
  private int[] edge(int firstX, int firstY, Bits seen) {
    int[] middles = new int[64];
    int count = 0;
    int x = firstX;
    int y = firstY + 1;
    int stepX = 0;
    int stepY = -1;
    do {
      if (stepY < 0) {
        seen.set(x, y - 1);
      }
      if (count + 2 > middles.length) {
        middles = Arrays.copyOf(middles, 2 * middles.length);
      }
      int middle = 2 * x + stepX;
      middles[count++] = wrong ? 2 * bits.columns() - middle : middle;
      middles[count++] = 2 * y + stepY;
      x += stepX;
      y += stepY;
      // The two points ahead: a quarter to the left and to the right of where it goes.
      int aheadX = x + (stepX + stepY - 1) / 2;
      int aheadY = y + (stepY - stepX - 1) / 2;
      boolean left = bits.get(aheadX, aheadY);
      boolean right = bits.get(x + (stepX - stepY - 1) / 2, y + (stepY + stepX - 1) / 2);
      if (!right) {
        int turned = -stepY;
        stepY = stepX;
        stepX = turned;
      } else if (left) {
        int turned = stepY;
        stepY = -stepX;
        stepX = turned;
      }
    } while (x != firstX || y != firstY + 1 || stepX != 0 || stepY != -1);
    return Arrays.copyOf(middles, count);
  }

  /** One ring in half points. */
  private final class Ring {

    private final int[] middles;

    Ring(int[] middles) {
      this.middles = middles;
    }

    /** In whole steps; without corners if nothing is left of it. */
    int[] straightened(double tolerance, double step) {
      int count = middles.length / 2;
      boolean[] kept = new boolean[count + 1];
      int before = 0;
      kept[0] = true;
      for (int next : new int[] {farthest(0), count}) {
        while (before < next) {
          int to = Math.min(next, before + LONGEST);
          kept[to] = true;
          keep(kept, before, to, tolerance);
          before = to;
        }
      }
      int[] ring = new int[2 * count];
      int length = 0;
      for (int i = 0; i < count; i++) {
        if (kept[i]) {
          int x = (int) Math.round(x(i) / step);
          int y = (int) Math.round(y(i) / step);
          if (length == 0 || ring[length - 2] != x || ring[length - 1] != y) {
            ring[length++] = x;
            ring[length++] = y;
          }
        }
      }
      return Arrays.copyOf(ring, length);
    }

    private int farthest(int from) {
      int farthest = from;
      double most = 0;
      for (int i = 0; i < middles.length / 2; i++) {
        double off = Math.hypot(x(i) - x(from), y(i) - y(from));
        if (off > most) {
          most = off;
          farthest = i;
        }
      }
      return farthest;
    }

    /** Marks the corners that are needed between two that are kept. */
    private void keep(boolean[] kept, int from, int to, double tolerance) {
      int[] open = new int[64];
      int count = 0;
      open[count++] = from;
      open[count++] = to;
      while (count > 0 && looks <= MOST_LOOKS) {
        GivenUp.ifAsked();
        int last = open[--count];
        int first = open[--count];
        int worst = worst(first, last, tolerance);
        if (worst > 0) {
          kept[worst] = true;
          if (count + 4 > open.length) {
            open = Arrays.copyOf(open, 2 * open.length);
          }
          open[count++] = first;
          open[count++] = worst;
          open[count++] = worst;
          open[count++] = last;
        }
      }
    }

    /** The one between two that lies farthest off their line, if farther than allowed; else 0. */
    private int worst(int first, int last, double tolerance) {
      double x = x(first);
      double y = y(first);
      double towardsX = x(last) - x;
      double towardsY = y(last) - y;
      double length = Math.hypot(towardsX, towardsY);
      double most = tolerance;
      int worst = 0;
      looks += last - first;
      for (int i = first + 1; i < last; i++) {
        double offX = x(i) - x;
        double offY = y(i) - y;
        double off =
            length == 0
                ? Math.hypot(offX, offY)
                : Math.abs(offX * towardsY - offY * towardsX) / length;
        if (off > most) {
          most = off;
          worst = i;
        }
      }
      return worst;
    }

    private double x(int corner) {
      return middles[2 * corner % middles.length] * along / 2;
    }

    private double y(int corner) {
      return middles[2 * corner % middles.length + 1] * across / 2;
    }
  }
}
