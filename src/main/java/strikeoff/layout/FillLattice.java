package strikeoff.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Arrangement;

/**
 * The lattice of a fill inside its rectangle. The first repeat lies in the corner at from and near;
 * a brick's every second row is shifted by half the pitch along x, a half-drop's every second
 * column by half the pitch along y (textile-design glossaries agree on both). A repeat counts only
 * if it lies wholly inside the rectangle.
 *
 * @param bounds of the turned design, seen from the unturned one's lower left corner
 * @param round circumference if the fill goes all round a closed cloth, else 0: then there is no
 *     end that a repeat could pass, and as many columns as whole pitches
 * @param scale factor on both pitches, 1 for the plan's own
 */
record FillLattice(Arrangement.Fill fill, Envelope bounds, double round, double scale) {

  FillLattice(Arrangement.Fill fill, Envelope bounds, Tube tube) {
    this(fill, bounds, FillRound.goesRound(fill, tube) ? tube.circumference() : 0, 1);
  }

  private double pitchX() {
    return fill.pitchLength().mm() * scale;
  }

  private double pitchY() {
    return fill.pitchWidth().mm() * scale;
  }

  private double freeX() {
    if (round > 0) {
      // All columns but the first, which holds() adds, and none that would be the first again.
      return Math.max(0, Math.floor((round + Tube.ROUNDING) / pitchX()) - 1) * pitchX();
    }
    return fill.to().mm() - fill.from().mm() - bounds.getWidth();
  }

  private double freeY() {
    return fill.far().mm() - fill.near().mm() - bounds.getHeight();
  }

  /** True if the rectangle is large enough for two repeats that lie a step along x and y apart. */
  boolean hasRoomFor(double[] step) {
    return Math.abs(step[0]) <= freeX() + Tube.ROUNDING
        && Math.abs(step[1]) <= freeY() + Tube.ROUNDING;
  }

  /** Whole steps of a pitch that fit into a free stretch, plus one: the open run of pitch sums. */
  private static double holds(double free, double pitch) {
    return free < -Tube.ROUNDING ? 0 : Math.floor((free + Tube.ROUNDING) / pitch) + 1;
  }

  /**
   * How many repeats the rectangle holds; in floating point, since it may be beyond all counting.
   */
  double count() {
    double columns = holds(freeX(), pitchX());
    double rows = holds(freeY(), pitchY());
    return switch (fill.lattice()) {
      case GRID -> columns * rows;
      case BRICK -> sum(rows, columns, holds(freeX() - brickShift(), pitchX()));
      case HALF_DROP -> sum(columns, rows, holds(freeY() - pitchY() / 2, pitchY()));
    };
  }

  /** How much further a shifted row ends; round a tube it has no end. */
  private double brickShift() {
    return round > 0 ? 0 : pitchX() / 2;
  }

  private static double sum(double lines, double straight, double shifted) {
    return Math.ceil(lines / 2) * straight + Math.floor(lines / 2) * shifted;
  }

  /**
   * The widest pitch in the same proportions of which the rectangle holds at least so many, to a
   * hundredth of the plan's pitch; the plan's own if it holds them.
   */
  String pitchFor(int wanted) {
    for (int percent = 100; percent > 0; percent--) {
      FillLattice closer = new FillLattice(fill, bounds, round, percent / 100.0);
      if (closer.count() >= wanted) {
        return Pitch.lattice(closer.pitchX(), closer.pitchY()).text();
      }
    }
    return "less than a hundredth of the plan's";
  }

  /** Lower left corners of the unturned design, along the length first; call only if countable. */
  List<Corner> corners() {
    List<Corner> corners = new ArrayList<>();
    boolean brick = fill.lattice() == Arrangement.Lattice.BRICK;
    boolean halfDrop = fill.lattice() == Arrangement.Lattice.HALF_DROP;
    int columns = (int) holds(freeX(), pitchX());
    int rows = (int) holds(freeY(), pitchY());
    for (int column = 0; column < columns; column++) {
      for (int row = 0; row < rows; row++) {
        double x = column * pitchX() + (brick && row % 2 == 1 ? pitchX() / 2 : 0);
        double y = row * pitchY() + (halfDrop && column % 2 == 1 ? pitchY() / 2 : 0);
        if ((round > 0 || x <= freeX() + Tube.ROUNDING) && y <= freeY() + Tube.ROUNDING) {
          corners.add(
              new Corner(
                  fill.from().mm() + x - bounds.getMinX(),
                  fill.near().mm() + y - bounds.getMinY()));
        }
      }
    }
    corners.sort(Comparator.comparingDouble(Corner::x).thenComparingDouble(Corner::y));
    return corners;
  }

  /** A place for a design's lower left corner, mm. */
  record Corner(double x, double y) {}
}
