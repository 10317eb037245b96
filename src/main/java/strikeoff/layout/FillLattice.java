package strikeoff.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Arrangement;
import strikeoff.units.Length;

/**
 * The lattice of a fill inside its rectangle. The first repeat lies in the corner at from and near;
 * a brick's every second row is shifted by half the pitch along x, a half-drop's every second
 * column by half the pitch along y (textile-design glossaries agree on both). A repeat counts only
 * if it lies wholly inside the rectangle.
 *
 * @param bounds of the turned design
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
      return Math.max(0, Math.floor((round + Length.TOLERANCE) / pitchX()) - 1) * pitchX();
    }
    return fill.to().mm() - fill.from().mm() - bounds.getWidth();
  }

  private double freeY() {
    return fill.far().mm() - fill.near().mm() - bounds.getHeight();
  }

  /** True if the rectangle is large enough for two repeats that lie a step along x and y apart. */
  boolean hasRoomFor(double[] step) {
    return Math.abs(step[0]) <= freeX() + Length.TOLERANCE
        && Math.abs(step[1]) <= freeY() + Length.TOLERANCE;
  }

  /** Whole steps of a pitch that fit into a free stretch, plus one: the open run of pitch sums. */
  private static double holds(double free, double pitch) {
    return free < -Length.TOLERANCE ? 0 : Math.floor((free + Length.TOLERANCE) / pitch) + 1;
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
   * hundredth of the plan's pitch; the plan's own if it holds them, none if repeats so close
   * overlap.
   */
  Optional<Pitch> pitchFor(int wanted) {
    for (int percent = 100; percent > 0; percent--) {
      FillLattice closer = new FillLattice(fill, bounds, round, percent / 100.0);
      if (closer.count() >= wanted) {
        boolean parts =
            closer.pitchX() >= bounds.getWidth() - Length.TOLERANCE
                && closer.pitchY() >= bounds.getHeight() - Length.TOLERANCE;
        // A pitch that goes round must also close: another fault, with closing pitches of its own.
        return percent == 100 || parts && round == 0
            ? Optional.of(Pitch.lattice(closer.pitchX(), closer.pitchY()))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** Lower left corners of what is seen, along the length first; call only if countable. */
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
        if ((round > 0 || x <= freeX() + Length.TOLERANCE) && y <= freeY() + Length.TOLERANCE) {
          corners.add(new Corner(fill.from().mm() + x, fill.near().mm() + y));
        }
      }
    }
    corners.sort(Comparator.comparingDouble(Corner::x).thenComparingDouble(Corner::y));
    return corners;
  }

  /** A place for a design's lower left corner, mm. */
  record Corner(double x, double y) {}
}
