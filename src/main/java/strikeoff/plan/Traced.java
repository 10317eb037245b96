package strikeoff.plan;

import java.util.Arrays;

/**
 * What a film prints as outlines, as it is seen on the cloth: coarser than the film, but true to
 * its area. Rings run round what prints and, the other way round, round the holes in it.
 */
public final class Traced {

  private final double step;
  private final int[][] rings;

  /**
   * @param step mm of one whole number
   * @param rings x and y of each corner in turn, from the left edge and from the far edge
   */
  public Traced(double step, int[][] rings) {
    this.step = step;
    this.rings = Arrays.stream(rings).map(int[]::clone).toArray(int[][]::new);
  }

  /** Millimetres of one whole number. */
  public double step() {
    return step;
  }

  /** Each ring: x and y of its corners in turn. */
  public int[][] rings() {
    return Arrays.stream(rings).map(int[]::clone).toArray(int[][]::new);
  }

  /** How many corners all rings have. */
  public int corners() {
    return Arrays.stream(rings).mapToInt(ring -> ring.length / 2).sum();
  }

  /** What they go round, in mm²; holes count against it. */
  public double area() {
    double twice = 0;
    for (int[] ring : rings) {
      twice += twiceArea(ring);
    }
    return Math.abs(twice) / 2 * step * step;
  }

  /** Twice a ring's area in whole numbers; one sign for what prints, the other one for holes. */
  public static long twiceArea(int[] ring) {
    long twice = 0;
    for (int i = 0, last = ring.length - 2; i < ring.length; last = i, i += 2) {
      twice += (long) ring[last] * ring[i + 1] - (long) ring[i] * ring[last + 1];
    }
    return twice;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Traced that
        && step == that.step
        && Arrays.deepEquals(rings, that.rings);
  }

  @Override
  public int hashCode() {
    return Arrays.deepHashCode(rings);
  }
}
