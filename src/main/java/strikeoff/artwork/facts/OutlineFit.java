package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;
import java.util.concurrent.ConcurrentHashMap;
import strikeoff.plan.PrintedCells;

/**
 * How an outline fits edges of other films once it is moved and made larger or smaller.
 *
 * @param share of what it prints that lies near an edge then; while it is looked for, in how many
 *     reaches on average
 * @param right how far its middle is moved, in mm; to the left if it is negative
 * @param far the same towards the far edge
 * @param scale how many times as large it is made, from its middle
 */
record OutlineFit(double share, double right, double far, double scale) {

  /** Steps of the first search, in mm: what is between lies within reach of one of them. */
  private static final double STEP = 2;

  private static final double COARSE = 2.5;

  /** Steps of the second one, and how many on either side. */
  private static final double FINE = 0.5;

  private static final int FINE_STEPS = 4;

  /** As many places of the outline are looked at while searching, spread over all of it. */
  private static final int FIRST_PLACES = 800;

  private static final int SECOND_PLACES = 3000;

  /**
   * All that is tried is tried on so many times fewer places first, and the best on all of them.
   */
  private static final int FEWER = 4;

  private static final int FOLLOWED = 50;

  /**
   * What was found, by outline, and then by all else that it was asked with: of one plan each edit
   * and each run that is tried asks again.
   */
  private static final Map<PrintedCells, Map<List<Object>, OutlineFit>> FOUND =
      Collections.synchronizedMap(new WeakHashMap<>());

  /** The places of an outline: x, y and share by turns. */
  private record Places(double[] all, double middleX, double middleY) {

    static Places of(PrintedCells cells) {
      int count = 0;
      for (int row = 0; row < cells.rows(); row++) {
        for (int column = 0; column < cells.columns(); column++) {
          count += cells.share(column, row) > 0 ? 1 : 0;
        }
      }
      double[] all = new double[3 * count];
      int i = 0;
      for (int row = 0; row < cells.rows(); row++) {
        for (int column = 0; column < cells.columns(); column++) {
          if (cells.share(column, row) > 0) {
            all[i++] = (column + 0.5) * cells.cellLength();
            all[i++] = (row + 0.5) * cells.cellWidth();
            all[i++] = cells.share(column, row);
          }
        }
      }
      return new Places(all, cells.length() / 2, cells.width() / 2);
    }

    /** Every so manieth of them. */
    Places thinned(int most) {
      int count = all.length / 3;
      int step = (count + most - 1) / most;
      if (step <= 1) {
        return this;
      }
      double[] some = new double[3 * ((count + step - 1) / step)];
      for (int i = 0; i * step < count; i++) {
        System.arraycopy(all, 3 * i * step, some, 3 * i, 3);
      }
      return new Places(some, middleX, middleY);
    }

    /** How many of them lie near an edge, each counted within as many reaches as there are. */
    double fit(List<CellEdges> edges, double right, double far, double scale) {
      double sum = 0;
      double near = 0;
      for (int i = 0; i < all.length; i += 3) {
        double x = middleX + (all[i] - middleX) * scale + right;
        double y = middleY + (all[i + 1] - middleY) * scale + far;
        int level = 0;
        for (CellEdges one : edges) {
          level = Math.max(level, one.level(x, y));
        }
        sum += all[i + 2];
        near += level * all[i + 2];
      }
      return near / sum;
    }
  }

  /**
   * The best there is.
   *
   * @param colours what it may be drawn round, on its rectangle
   * @param reach how far from an edge still counts, in mm
   * @param most how far it may be moved, in mm
   * @param larger how much larger or smaller it may be made, as a share
   */
  static OutlineFit best(
      PrintedCells outline, List<PrintedCells> colours, double reach, double most, double larger) {
    return FOUND
        .computeIfAbsent(outline, o -> new ConcurrentHashMap<>())
        .computeIfAbsent(
            List.of(colours, reach, most, larger),
            asked -> searched(outline, colours, reach, most, larger));
  }

  private static OutlineFit searched(
      PrintedCells outline, List<PrintedCells> colours, double reach, double most, double larger) {
    Places places = Places.of(outline);
    double half = Math.max(outline.length(), outline.width()) / 2;
    // The ends lie within reach of one step or the next.
    double scaleStep = Math.min(larger, COARSE / half);
    // Nearer is better, so that the search is led to the middle of what fits.
    List<CellEdges> edges = edges(colours, reach + COARSE, reach + COARSE / 2, reach, 0);
    int scales = (int) Math.round(larger / scaleStep);
    int moves = (int) Math.round(most / STEP);
    OutlineFit middle = new OutlineFit(0, 0, 0, 1);
    OutlineFit first =
        middle
            .around(scales, scaleStep, moves, STEP)
            .best(places.thinned(FIRST_PLACES / FEWER), places.thinned(FIRST_PLACES), edges);
    OutlineFit best =
        first
            .around(FINE_STEPS, scaleStep / FINE_STEPS, FINE_STEPS, FINE)
            .best(places.thinned(SECOND_PLACES / FEWER), places.thinned(SECOND_PLACES), edges);
    return new OutlineFit(
        places.fit(edges(colours, reach), best.right, best.far, best.scale),
        best.right,
        best.far,
        best.scale);
  }

  /** All that are tried, none of which has a share yet. */
  private record Tried(List<OutlineFit> all) {

    /** The one that fits best of those that do so on few places. */
    OutlineFit best(Places few, Places places, List<CellEdges> edges) {
      List<OutlineFit> followed =
          all.stream()
              .map(one -> one.on(few, edges))
              .sorted(Comparator.comparingDouble((OutlineFit one) -> -one.share))
              .limit(FOLLOWED)
              .map(one -> one.on(places, edges))
              .toList();
      return Collections.max(followed, Comparator.comparingDouble(OutlineFit::share));
    }
  }

  /** This with so many steps either way of size, along and across. */
  private Tried around(int scales, double scaleStep, int moves, double step) {
    List<OutlineFit> all = new ArrayList<>();
    for (int s = -scales; s <= scales; s++) {
      for (int y = -moves; y <= moves; y++) {
        for (int x = -moves; x <= moves; x++) {
          all.add(new OutlineFit(0, right + x * step, far + y * step, scale + s * scaleStep));
        }
      }
    }
    return new Tried(all);
  }

  private OutlineFit on(Places places, List<CellEdges> edges) {
    return new OutlineFit(places.fit(edges, right, far, scale), right, far, scale);
  }

  private static List<CellEdges> edges(List<PrintedCells> colours, double... reaches) {
    return CellEdges.together(
        colours.stream().map(colour -> CellEdges.of(colour, reaches)).toList());
  }

  /** How far a corner of its rectangle moves at most, in mm. */
  double by(PrintedCells outline) {
    double x = Math.abs(scale - 1) * outline.length() / 2 + Math.abs(right);
    double y = Math.abs(scale - 1) * outline.width() / 2 + Math.abs(far);
    return Math.hypot(x, y);
  }
}
