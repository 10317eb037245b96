package strikeoff.report;

import java.util.function.DoubleFunction;
import strikeoff.units.Quantity;
import strikeoff.units.Range;

/** Words for a value that is known as a range. */
final class Estimates {

  private Estimates() {}

  /** The best value. */
  static String best(Range range, DoubleFunction<Quantity> unit) {
    return unit.apply(range.best()).text();
  }

  /** From the lowest to the highest credible value; empty if there is just one. */
  static String spread(Range range, DoubleFunction<Quantity> unit) {
    String low = unit.apply(range.low()).text();
    String high = unit.apply(range.high()).text();
    return low.equals(high) ? "" : low + " to " + high;
  }
}
