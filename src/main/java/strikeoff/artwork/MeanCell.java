package strikeoff.artwork;

import java.util.stream.IntStream;

/**
 * One cell of a grid as all cells of a square make it together: along and across as the grid runs,
 * from one row of it to the next.
 */
final class MeanCell {

  private static final int PARTS = 24;

  /** A disc fills 0.79 of the square around it, a dot that stands on its corner a half. */
  private static final double FILLED = 0.9;

  private static final double LEAST_ROUND = 0.7;
  private static final double MOST_ROUND = 0.87;

  /** Of smaller parts nobody can say whether they are round. */
  private static final double FEWEST_POINTS = 6;

  private final boolean[] ink;
  private final double along;
  private final double across;

  /**
   * @param tile rows of a square, each value from 0 to {@code full}
   * @param one how often the grid goes through it one way, along and across
   * @param other the same of the other way
   */
  MeanCell(double[] tile, int side, double full, double[] one, double[] other) {
    double[] sums = new double[PARTS * PARTS];
    int[] counts = new int[PARTS * PARTS];
    for (int y = 0; y < side; y++) {
      for (int x = 0; x < side; x++) {
        int at = part(one, x, y, side) * PARTS + part(other, x, y, side);
        sums[at] += tile[y * side + x];
        counts[at]++;
      }
    }
    ink = new boolean[sums.length];
    for (int i = 0; i < ink.length; i++) {
      ink[i] = sums[i] > counts[i] * full / 2;
    }
    along = side / Math.hypot(one[0], one[1]);
    across = side / Math.hypot(other[0], other[1]);
  }

  private static int part(double[] wave, int x, int y, int side) {
    double turns = (wave[0] * (x + 0.5) + wave[1] * (y + 0.5)) / side;
    return Math.min(PARTS - 1, (int) ((turns - Math.floor(turns)) * PARTS));
  }

  /**
   * True if straight lines cross along the grid: what they leave, or what stands between bare ones,
   * is a rectangle along it. A dot is rounder, and dots of one grid that differ in size leave the
   * rectangle around the largest less than full.
   */
  boolean isCrossedByLines() {
    return isRectangle(true) || isRectangle(false);
  }

  /** True of round dots or holes that stand apart. */
  boolean isOfDiscs() {
    return isRound(filled(true)) || isRound(filled(false));
  }

  private static boolean isRound(double filled) {
    return filled > LEAST_ROUND && filled < MOST_ROUND;
  }

  private boolean isRectangle(boolean of) {
    return filled(of) >= FILLED;
  }

  /** The share of the rectangle around one of both that it fills; 0 where it goes on all along. */
  private double filled(boolean of) {
    boolean[] columns = new boolean[PARTS];
    boolean[] rows = new boolean[PARTS];
    int count = 0;
    for (int i = 0; i < ink.length; i++) {
      if (ink[i] == of) {
        columns[i / PARTS] = true;
        rows[i % PARTS] = true;
        count++;
      }
    }
    int wide = count(columns);
    int high = count(rows);
    boolean apart = wide < PARTS && high < PARTS;
    boolean large = Math.min(wide * along, high * across) >= FEWEST_POINTS * PARTS;
    return apart && large ? (double) count / (wide * high) : 0;
  }

  private static int count(boolean[] of) {
    return (int) IntStream.range(0, of.length).filter(i -> of[i]).count();
  }
}
