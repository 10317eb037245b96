package strikeoff.artwork;

import java.util.Arrays;
import java.util.stream.IntStream;
import strikeoff.document.GivenUp;

/**
 * Points along the edges of a film's print, spread evenly, and which way is out there. What is cut
 * off at the border of the film is no edge.
 *
 * @param all x, y, the two parts of the way out, and for how long an edge the point stands, by
 *     turns, in mm; from the film's left far corner, to the right and down
 */
record EdgePoints(double[] all) {

  /** Numbers of a point. */
  static final int EACH = 5;

  /** Lines of the grid in which edges are crossed lie so far apart, in mm. */
  private static final double GRID = 0.5;

  /**
   * Further apart where a film would have more points than that, hatched or of dots all over: it
   * says as much by fewer, and they would take more room than the film.
   */
  private static final double MOST = 200_000;

  /** Which way is out is seen within so far, in mm. */
  private static final double AROUND = 0.5;

  /** A row of what is around is one word. */
  private static final int MOST_AROUND = 31;

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /** Of a straight edge it is one; what is much less is frayed. */
  private static final double CLEAR = 0.3;

  /** Finds those of a film. */
  static EdgePoints of(Bits film, double along, double across) {
    Finder finder = new Finder(film, along, across);
    int columns = finder.step(along);
    int rows = finder.step(across);
    for (int y = rows / 2; y < film.rows(); y += rows) {
      GivenUp.ifAsked();
      for (int x = film.change(0, y); x < film.columns(); x = film.change(x, y)) {
        finder.cross(x, y + 0.5, rows * across, true);
      }
    }
    for (int y = 1; y < film.rows(); y++) {
      GivenUp.ifAsked();
      for (int word = 0; word < film.columns(); word += Long.SIZE) {
        long differ = film.from(word, y) ^ film.from(word, y - 1);
        for (; differ != 0; differ &= differ - 1) {
          int x = word + Long.numberOfTrailingZeros(differ);
          if (x % columns == columns / 2) {
            finder.cross(x + 0.5, y, columns * along, false);
          }
        }
      }
    }
    return new EdgePoints(Arrays.copyOf(finder.all, finder.size));
  }

  int count() {
    return all.length / EACH;
  }

  /**
   * The same on a film of that length and width that is turned.
   *
   * @param along true if left becomes right
   * @param across true if the top becomes the bottom
   */
  EdgePoints turned(double length, double width, boolean along, boolean across) {
    double[] turned = all.clone();
    for (int i = 0; i < turned.length; i += EACH) {
      turned[i] = along ? length - turned[i] : turned[i];
      turned[i + 1] = across ? width - turned[i + 1] : turned[i + 1];
      turned[i + 2] *= along ? -1 : 1;
      turned[i + 3] *= across ? -1 : 1;
    }
    return new EdgePoints(turned);
  }

  /** One in the middle of them all, with no way out. */
  double[] middle() {
    double[] middle = new double[EACH];
    for (int i = 0; i < all.length; i += EACH) {
      middle[0] += all[i] / count();
      middle[1] += all[i + 1] / count();
    }
    return middle;
  }

  /** How long all edges are, in mm. */
  double length() {
    double length = 0;
    for (int i = EACH - 1; i < all.length; i += EACH) {
      length += all[i];
    }
    return length;
  }

  /**
   * About so many of them, if there are more. They are taken by the golden ratio: every so manieth
   * would be left edges alone where a row has as many.
   */
  EdgePoints thinned(int most) {
    double share = (double) most / count();
    if (share >= 1) {
      return this;
    }
    int[] taken = IntStream.range(0, count()).filter(i -> i * GOLDEN % 1 < share).toArray();
    double[] some = new double[taken.length * EACH];
    for (int i = 0; i < taken.length; i++) {
      System.arraycopy(all, taken[i] * EACH, some, i * EACH, EACH);
      some[(i + 1) * EACH - 1] /= share;
    }
    return new EdgePoints(some);
  }

  /** Gathers them. */
  private static final class Finder {

    private final Bits film;
    private final double along;
    private final double across;
    private final int columns;
    private final int rows;
    private final double grid;
    private double[] all = new double[EACH << 10];
    private int size;

    Finder(Bits film, double along, double across) {
      this.film = film;
      this.along = along;
      this.across = across;
      this.columns = around(along);
      this.rows = around(across);
      double crossed = 2 * (film.runs() * across + film.runsAcross() * along) / GRID;
      this.grid = GRID * Math.max(1, crossed / MOST);
    }

    private static int around(double point) {
      return Math.max(2, Math.min(MOST_AROUND, (int) Math.round(AROUND / point)));
    }

    int step(double point) {
      return Math.max(1, (int) Math.round(grid / point));
    }

    /**
     * Notes an edge where a line crosses it.
     *
     * @param length of the line's edge for which this crossing stands, if it were crossed straight
     */
    void cross(double x, double y, double length, boolean byRow) {
      int column = (int) x;
      int row = (int) y;
      if (column < columns
          || row < rows
          || column + columns > film.columns()
          || row + rows > film.rows()) {
        return;
      }
      int left = 0;
      int right = 0;
      int above = 0;
      int below = 0;
      long half = (1L << columns) - 1;
      for (int i = -rows; i < rows; i++) {
        long word = film.from(column - columns, row + i);
        int first = Long.bitCount(word & half);
        int second = Long.bitCount(word >>> columns & half);
        left += first;
        right += second;
        above += i < 0 ? first + second : 0;
        below += i < 0 ? 0 : first + second;
      }
      double most = 2.0 * rows * columns;
      double ahead = (left - right) / most;
      double down = (above - below) / most;
      if (Math.hypot(ahead, down) < CLEAR) {
        return;
      }
      // What a straight edge leaves bare of a square tells its slope, but not in proportion.
      double both = Math.abs(ahead) + Math.abs(down);
      boolean upright = Math.abs(ahead) > Math.abs(down);
      double outX = (upright ? Math.copySign(both, ahead) : 2 * ahead) / (columns * along);
      double outY = (upright ? 2 * down : Math.copySign(both, down)) / (rows * across);
      // An edge that is met more aslant is crossed by the other lines of the grid.
      if (byRow != Math.abs(outX) > Math.abs(outY)) {
        return;
      }
      double steep = Math.hypot(outX, outY);
      if (size == all.length) {
        all = Arrays.copyOf(all, 2 * size);
      }
      all[size++] = x * along;
      all[size++] = y * across;
      all[size++] = outX / steep;
      all[size++] = outY / steep;
      all[size++] = length * steep / Math.abs(byRow ? outX : outY);
    }
  }
}
