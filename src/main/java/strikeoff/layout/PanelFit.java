package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import strikeoff.units.Length;

/**
 * Two panels laid on each other by a mirror.
 *
 * @param left the one with the smaller places at right angles to the line
 * @param partners for each copy of the right one, by index, the index of its partner in the left
 * @param axis where the line lies
 */
record PanelFit(Panel left, Panel right, int[] partners, double axis) {

  /** By the line that fits most copies: the median, which one stray copy doesn't move. */
  static PanelFit of(Panel left, Panel right) {
    List<Integer> inner = left.order(-1);
    List<Integer> outer = right.order(1);
    int[] partners = new int[outer.size()];
    List<Double> sums = new ArrayList<>();
    for (int i = 0; i < partners.length; i++) {
      partners[outer.get(i)] = inner.get(i);
      sums.add(left.centres().get(inner.get(i)).x + right.centres().get(outer.get(i)).x);
    }
    return new PanelFit(left, right, partners, median(sums) / 2);
  }

  PanelFit about(double line) {
    return new PanelFit(left, right, partners, line);
  }

  /** What a copy of the right panel has to move so that it mirrors its partner. */
  Coordinate moveOfRight(int index) {
    Coordinate partner = left.centres().get(partners[index]);
    Coordinate own = right.centres().get(index);
    return new Coordinate(2 * axis - partner.x - own.x, partner.y - own.y);
  }

  /** What the partner in the left panel would have to move instead. */
  Coordinate moveOfLeft(int index) {
    Coordinate move = moveOfRight(index);
    return new Coordinate(move.x, -move.y);
  }

  double misfit(int index) {
    Coordinate move = moveOfRight(index);
    double misfit = Math.hypot(move.x, move.y);
    return misfit < Length.TOLERANCE ? 0 : misfit;
  }

  int worst() {
    int worst = 0;
    for (int i = 1; i < partners.length; i++) {
      worst = misfit(i) > misfit(worst) ? i : worst;
    }
    return worst;
  }

  /** Half of the copies misfit by no more. */
  double typical() {
    List<Double> misfits = new ArrayList<>();
    for (int i = 0; i < partners.length; i++) {
      misfits.add(misfit(i));
    }
    return median(misfits);
  }

  /** Free distance between the panels at the line, below zero if they overlap. */
  double apart() {
    return right.bounds().getMinX() - left.bounds().getMaxX();
  }

  /** The lower one of two middle values, so that it is always one that occurs. */
  private static double median(List<Double> values) {
    return values.stream().sorted().toList().get((values.size() - 1) / 2);
  }
}
