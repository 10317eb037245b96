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
    Sum first = new Sum(one, other, films.third(), x, y);
    Sum second = new Sum(other, one, films.third(), x, y);
    long both = 0;
    for (int row = 0; row < one.rows(); row++) {
      GivenUp.ifAsked();
      int[] stretches = where.inRow(row);
      for (int i = 0; i < stretches.length; i += 2) {
        for (int column = stretches[i]; column < stretches[i + 1]; column += Long.SIZE) {
          long a = one.from(column, row);
          long b = other.from(column, row);
          if ((a | b) != 0) {
            both += Long.bitCount(a & b);
            first.add(a, b, column, row);
            second.add(b, a, column, row);
          }
        }
      }
    }
    double cm = along * across / SQUARE_MM_IN_CM;
    return new LaidOff(new Area(both * cm), first.side(cm), second.side(cm));
  }

  /** What follows of one of them. */
  private static final class Sum {

    private final Bits mine;
    private final Bits others;
    private final Bits third;
    private final int[] x;
    private final int[] y;
    private final long[] bare = new long[WAYS];
    private long inside;

    Sum(Bits mine, Bits others, Bits third, int[] x, int[] y) {
      this.mine = mine;
      this.others = others;
      this.third = third;
      this.x = x;
      this.y = y;
    }

    /** Sixty-four points, as both print them. */
    void add(long own, long its, int column, int row) {
      long under = own & its;
      // Half the way too: nothing narrower stands between.
      for (int way = 0; way < WAYS && under != 0; way++) {
        under &= others.from(column + x[way], row + y[way]);
        under &= others.from(column + x[way] / 2, row + y[way] / 2);
      }
      inside += Long.bitCount(under);
      long alone = own & ~its;
      alone &= alone == 0 ? 0 : ~third.from(column, row);
      for (int way = 0; way < WAYS && alone != 0; way++) {
        bare[way] += Long.bitCount(opened(alone, column, row, x[way], y[way]));
      }
    }

    /**
     * Those of sixty-four points that are covered no more once this film is moved, and that lie
     * between it and the other: back from them against the way that it was moved comes the other,
     * and nothing before. What the far side of a line lets go of is not between them.
     */
    private long opened(long alone, int column, int row, int x, int y) {
      long open = alone & ~mine.from(column - x, row - y);
      long found = 0;
      int steps = Math.max(Math.abs(x), Math.abs(y));
      for (int i = 1; i <= steps && open != 0; i++) {
        int toColumn = column - Math.round((float) x * i / steps);
        int toRow = row - Math.round((float) y * i / steps);
        found |= open & others.from(toColumn, toRow);
        open &= ~(found | mine.from(toColumn - x, toRow - y) | third.from(toColumn, toRow));
      }
      return found;
    }

    Side side(double cm) {
      long most = 0;
      for (long one : bare) {
        most = Math.max(most, one);
      }
      return new Side(new Area(inside * cm), new Area(most * cm), Optional.empty());
    }
  }
}
