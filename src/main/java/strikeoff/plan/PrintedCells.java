package strikeoff.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.DoubleStream;
import strikeoff.evidence.FilmPlace;
import strikeoff.units.Length;

/**
 * How much of a film prints, cell by cell of about a square millimetre: what is left of it once its
 * points are dropped. Seen as on the cloth, from the separation's left near corner. A cell is a
 * whole number of points; those at the right and at the far edge may be smaller.
 */
public final class PrintedCells {

  /** Of a cell that prints all over. */
  public static final int FULL = 255;

  /** Frames lie in so many ways on a film's copies at most; then what is known is forgotten. */
  private static final int MOST_KNOWN = 1_000;

  /** Corners are known to so many parts of a millimetre. */
  private static final double GRAINS = 1000;

  private final double length;
  private final double width;
  private final double cellLength;
  private final double cellWidth;
  private final int columns;
  private final int rows;
  private final byte[] shares;

  /** The same frame lies alike on many copies, run after run that is tried. */
  private final Map<List<Long>, Double> known = new ConcurrentHashMap<>();

  /** Found once; empty until then. */
  private volatile List<FilmPlace> outline = List.of();

  /**
   * @param length of the separation's rectangle, in mm, as {@code width} and the sides of a cell
   * @param shares of {@link #FULL}, row by row, the near one first; 0 only where nothing prints
   */
  public PrintedCells(
      double length, double width, double cellLength, double cellWidth, byte[] shares) {
    this.length = length;
    this.width = width;
    this.cellLength = cellLength;
    this.cellWidth = cellWidth;
    this.columns = cells(length, cellLength);
    this.rows = cells(width, cellWidth);
    this.shares = shares.clone();
    if (shares.length != columns * rows) {
      throw new IllegalArgumentException(shares.length + " cells do not fill the film");
    }
  }

  /** How many cells a side has. */
  public static int cells(double side, double cell) {
    return Math.max(1, (int) Math.ceil(side / cell - 1e-9));
  }

  public int columns() {
    return columns;
  }

  public int rows() {
    return rows;
  }

  /** Length of the separation, in mm. */
  public double length() {
    return length;
  }

  /** The same across. */
  public double width() {
    return width;
  }

  /** Side of a cell along the separation, in mm. */
  public double cellLength() {
    return cellLength;
  }

  /** The same across. */
  public double cellWidth() {
    return cellWidth;
  }

  /** The share of a cell that prints, of {@link #FULL}. */
  public int share(int column, int row) {
    return shares[row * columns + column] & FULL;
  }

  /** The same of the cell at a place in mm; 0 outside. */
  public int at(double x, double y) {
    int cell = cellAt(x, y);
    return cell < 0 ? 0 : shares[cell] & FULL;
  }

  /** Which cell lies at a place in mm, counted row by row from 0; -1 outside. */
  private int cellAt(double x, double y) {
    if (x < 0 || y < 0) {
      return -1;
    }
    int column = (int) (x / cellLength);
    int row = (int) (y / cellWidth);
    return column >= columns || row >= rows ? -1 : row * columns + column;
  }

  /**
   * The printed area in a convex shape, in mm². Where the shape's edge runs through a cell, what
   * prints there is taken to lie evenly over it.
   *
   * @param x of its corners in turn, in mm from the separation's left edge
   * @param y the same from its near edge
   */
  public double within(double[] x, double[] y) {
    List<Long> shape =
        DoubleStream.concat(Arrays.stream(x), Arrays.stream(y))
            .mapToObj(PrintedCells::grain)
            .toList();
    Double area = known.get(shape);
    if (area == null) {
      // Of the very shape that it is known by, whichever of those near to it was asked first.
      area = sum(new Convex(onGrain(x), onGrain(y)));
      if (known.size() >= MOST_KNOWN) {
        known.clear();
      }
      known.put(shape, area);
    }
    return area;
  }

  /**
   * Corners in turn of the convex outline around all cells that print.
   *
   * @param within the bounds of the points that print, which cells tell only to their own sides
   */
  List<FilmPlace> outline(Artwork.Reach within) {
    if (outline.isEmpty()) {
      outline = aroundCells(within);
    }
    return outline;
  }

  private List<FilmPlace> aroundCells(Artwork.Reach within) {
    Deque<FilmPlace> left = new ArrayDeque<>();
    Deque<FilmPlace> right = new ArrayDeque<>();
    for (int row = 0; row < rows(); row++) {
      int first = 0;
      while (first < columns && share(first, row) == 0) {
        first++;
      }
      if (first < columns) {
        int last = columns - 1;
        while (share(last, row) == 0) {
          last--;
        }
        double from = Math.max(within.left().mm(), first * cellLength);
        double to = Math.min(within.right().mm(), (last + 1) * cellLength);
        double near = Math.max(within.near().mm(), row * cellWidth);
        double far = Math.min(within.far().mm(), (row + 1) * cellWidth);
        for (double y : new double[] {near, far}) {
          bulging(left, from, y, -1);
          bulging(right, to, y, 1);
        }
      }
    }
    List<FilmPlace> around = new ArrayList<>(right);
    left.descendingIterator().forEachRemaining(around::add);
    return List.copyOf(around);
  }

  /** Goes on to the next place; those before that a line to it leaves inside are dropped. */
  private static void bulging(Deque<FilmPlace> side, double x, double y, int outwards) {
    FilmPlace next = new FilmPlace(new Length(x), new Length(y));
    while (side.size() > 1) {
      FilmPlace last = side.removeLast();
      if (outwards * turn(side.getLast(), last, next) > 0) {
        side.addLast(last);
        break;
      }
    }
    side.addLast(next);
  }

  /** Above zero where three places turn to the left. */
  private static double turn(FilmPlace one, FilmPlace two, FilmPlace three) {
    return (two.x().mm() - one.x().mm()) * (three.y().mm() - one.y().mm())
        - (two.y().mm() - one.y().mm()) * (three.x().mm() - one.x().mm());
  }

  private static Long grain(double mm) {
    return Math.round(mm * GRAINS);
  }

  private static double[] onGrain(double[] mm) {
    return Arrays.stream(mm).map(each -> grain(each) / GRAINS).toArray();
  }

  private double sum(Convex shape) {
    double sum = 0;
    int last = Math.min(rows() - 1, (int) Math.floor(shape.mostY() / cellWidth));
    for (int row = Math.max(0, (int) Math.floor(shape.leastY() / cellWidth)); row <= last; row++) {
      double near = row * cellWidth;
      double far = Math.min(width, near + cellWidth);
      sum += row(row, shape.acrossFrom(near).acrossTo(far), near, far);
    }
    return sum / FULL;
  }

  /** What lies in the part of a shape that is in one row, times {@link #FULL}. */
  private double row(int row, Convex part, double near, double far) {
    if (part.isEmpty()) {
      return 0;
    }
    double[] all = part.fullAcross(near, far);
    double sum = 0;
    int last = Math.min(columns - 1, (int) Math.floor(part.mostX() / cellLength));
    for (int i = Math.max(0, (int) Math.floor(part.leastX() / cellLength)); i <= last; i++) {
      int share = share(i, row);
      if (share > 0) {
        double left = i * cellLength;
        double right = Math.min(length, left + cellLength);
        boolean inside = left >= all[0] && right <= all[1];
        double area =
            inside ? (right - left) * (far - near) : part.alongFrom(left).alongTo(right).area();
        sum += share * area;
      }
    }
    return sum;
  }
}
