package strikeoff.artwork;

import java.util.Optional;
import strikeoff.document.GivenUp;
import strikeoff.plan.Joint.Side;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * Two films over each other as they are drawn, and laid off by a tolerance in eight directions.
 *
 * @param both area that both print
 */
record LaidOff(Area both, Side one, Side other) {

  private static final int WAYS = 8;
  private static final double SQUARE_MM_IN_CM = 100;

  /**
   * Lays them.
   *
   * @param where they come near to each other
   * @param along mm from one point of a row to the next, on the cloth
   * @param across mm from one row to the next
   */
  static LaidOff of(TwoFilms films, FilmsNear where, double along, double across, Length off) {
    Bits one = films.one();
    Bits other = films.other();
    int[] x = new int[WAYS];
    int[] y = new int[WAYS];
    for (int way = 0; way < WAYS; way++) {
      double angle = 2 * Math.PI * way / WAYS;
      x[way] = (int) Math.round(off.mm() / along * Math.cos(angle));
      y[way] = (int) Math.round(off.mm() / across * Math.sin(angle));
    }
    int far = (int) Math.ceil(off.mm() / Math.min(along, across));
    Sum first = new Sum(one, other, films.third(), x, y, far);
    Sum second = new Sum(other, one, films.third(), x, y, far);
    long both = 0;
    for (int row = 0; row < one.rows(); row++) {
      GivenUp.ifAsked();
      first.at(row);
      second.at(row);
      int[] stretches = where.inRow(row);
      for (int i = 0; i < stretches.length; i += 2) {
        for (int column = stretches[i]; column < stretches[i + 1]; column += Long.SIZE) {
          long a = one.from(column, row);
          long b = other.from(column, row);
          if ((a | b) != 0) {
            both += Long.bitCount(a & b);
            first.share(a & b, column, row);
            second.share(a & b, column, row);
          }
          // Bare ground opens between the two, so both print near it.
          if (first.isNear(column) && second.isNear(column)) {
            long neither = ~(a | b) & inRow(one.columns() - column);
            first.open(neither, a, column, row);
            second.open(neither, b, column, row);
          }
        }
      }
    }
    double cm = along * across / SQUARE_MM_IN_CM;
    return new LaidOff(new Area(both * cm), first.side(cm), second.side(cm));
  }

  /** All sixty-four points of a word, or fewer at a row's end. */
  private static long inRow(int points) {
    return points < Long.SIZE ? (1L << points) - 1 : -1;
  }

  /** What follows of one of them. */
  private static final class Sum {

    private final Bits mine;
    private final Bits others;
    private final Bits third;
    private final int[] x;
    private final int[] y;
    private final int far;
    private final long[] bare = new long[WAYS];

    /** Of each word of a row, in how many rows near this one the film prints in it. */
    private final int[] near;

    private long inside;

    /**
     * @param far how many points it is moved at most, either way
     */
    Sum(Bits mine, Bits others, Bits third, int[] x, int[] y, int far) {
      this.mine = mine;
      this.others = others;
      this.third = third;
      this.x = x;
      this.y = y;
      this.far = far;
      this.near = new int[(mine.columns() + Long.SIZE - 1) / Long.SIZE];
      for (int row = 0; row < far; row++) {
        count(row, 1);
      }
    }

    /** Goes on to a row, from the one before it. */
    void at(int row) {
      count(row + far, 1);
      count(row - far - 1, -1);
    }

    private void count(int row, int by) {
      if (row < 0 || row >= mine.rows()) {
        return;
      }
      for (int at = mine.next(0, row, true); at < mine.columns(); ) {
        int word = at / Long.SIZE;
        near[word] += by;
        at = mine.next((word + 1) * Long.SIZE, row, true);
      }
    }

    private boolean isNear(int column) {
      int word = column / Long.SIZE;
      int words = 1 + (far - 1) / Long.SIZE;
      int last = Math.min(near.length - 1, word + words);
      for (int i = Math.max(0, word - words); i <= last; i++) {
        if (near[i] > 0) {
          return true;
        }
      }
      return false;
    }

    /** Sixty-four points, as both print them. */
    void share(long both, int column, int row) {
      long under = both;
      // Half the way too: nothing narrower stands between.
      for (int way = 0; way < WAYS && under != 0; way++) {
        under &= others.from(column + x[way], row + y[way]);
        under &= others.from(column + x[way] / 2, row + y[way] / 2);
      }
      inside += Long.bitCount(under);
    }

    /**
     * Sixty-four points that may be bare.
     *
     * @param neither those that none of the two prints
     * @param own those that this film prints
     */
    void open(long neither, long own, int column, int row) {
      long ground = (neither | own & ~others.from(column, row)) & ~third.from(column, row);
      for (int way = 0; way < WAYS && ground != 0; way++) {
        bare[way] += Long.bitCount(opened(ground, own, column, row, x[way], y[way]));
      }
    }

    /**
     * Those of sixty-four points that lie bare between this film and the other once this one is
     * moved: back from them against the way that it was moved it lay, and comes the other, with
     * nothing before. What the far side of a line lets go of is not between them, and what lay open
     * beside it before it was moved is none of its doing.
     */
    private long opened(long ground, long own, int column, int row, int x, int y) {
      long open = ground & ~mine.from(column - x, row - y);
      long lay = own;
      long found = 0;
      int steps = Math.max(Math.abs(x), Math.abs(y));
      for (int i = 1; i <= steps && open != 0; i++) {
        int toColumn = column - Math.round((float) x * i / steps);
        int toRow = row - Math.round((float) y * i / steps);
        lay |= mine.from(toColumn, toRow);
        long met = open & others.from(toColumn, toRow);
        found |= met & lay;
        open &= ~(met | mine.from(toColumn - x, toRow - y) | third.from(toColumn, toRow));
      }
      return found;
    }

    Side side(double cm) {
      long most = 0;
      for (long one : bare) {
        most = Math.max(most, one);
      }
      return new Side(
          new Area(inside * cm), new Area(most * cm), Optional.empty(), Optional.empty());
    }
  }
}
