package strikeoff.drying;

import java.util.Arrays;

/**
 * When a film reaches a state: on each of the {@link Days}, sorted. Times are whole seconds of the
 * caller's clock; {@link DryingClock#NEVER} stands for never.
 */
public final class Dried {

  private final int[] after;
  private final Points points;
  private final long from;
  private final long felt;
  private final long slow;

  /** Where in the sorted days stand those that are told: of quick, ordinary and slow drying. */
  record Points(int quick, int ordinary, int slow) {}

  /** Stands for a time that doesn't come. */
  static final int NO_TIME = Integer.MAX_VALUE;

  /**
   * @param after seconds from the film's beginning, sorted; {@link #NO_TIME} for never
   */
  Dried(int[] after, Points points, long from) {
    this(
        after,
        points,
        from,
        DryingClock.NEVER,
        after[points.slow] == NO_TIME ? DryingClock.NEVER : from + after[points.slow]);
  }

  private Dried(int[] after, Points points, long from, long felt, long slow) {
    this.after = after;
    this.points = points;
    this.from = from;
    this.felt = felt;
    this.slow = slow;
  }

  /** In quick drying: one day in ten is quicker still. */
  public long earliest() {
    return at(points.quick);
  }

  /** On an ordinary day: half of all days are quicker. */
  public long best() {
    return at(points.ordinary);
  }

  /** In slow drying: one day in ten is slower still. */
  public long latest() {
    return at(points.slow);
  }

  /** The same though it is felt sooner: so long whoever feels it may have to wait. */
  public long slow() {
    return slow;
  }

  private long at(int day) {
    return after[day] == NO_TIME ? felt : Math.min(felt, from + after[day]);
  }

  /** The share of all days on which it has not reached the state by a second. */
  public double chanceAfter(long second) {
    if (second >= felt) {
      return 0;
    }
    int low = 0;
    int high = after.length;
    while (low < high) { // the first day that is later
      int middle = (low + high) >>> 1;
      if (after[middle] == NO_TIME || from + after[middle] > second) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return (double) (after.length - low) / after.length;
  }

  /** The same if somebody feels the film at a second, and waits till it has reached the state. */
  public Dried felt(long second) {
    return second < felt ? new Dried(after, points, from, second, slow) : this;
  }

  /**
   * The same if whoever feels it has to wait on.
   *
   * @param waited how it dries for as long as the wait goes on
   */
  public Dried slowAs(Dried waited) {
    return new Dried(after, points, from, felt, waited.slow);
  }

  /** The same, in slow drying not before it has reached a state that comes before this one. */
  public Dried slowNotBefore(Dried earlier) {
    return earlier.slow > slow ? slowAs(earlier) : this;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Dried dried
        && from == dried.from
        && felt == dried.felt
        && slow == dried.slow
        && points.equals(dried.points)
        && Arrays.equals(after, dried.after);
  }

  @Override
  public int hashCode() {
    return 31 * Long.hashCode(from) + Arrays.hashCode(after);
  }
}
