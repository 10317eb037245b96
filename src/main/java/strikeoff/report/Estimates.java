package strikeoff.report;

import java.util.function.DoubleFunction;
import strikeoff.units.Measures;
import strikeoff.units.Quantity;
import strikeoff.units.Range;

/** Words for a value that is known as a range. */
final class Estimates {

  private Estimates() {}

  /** The best value. */
  static String best(Range range, DoubleFunction<Quantity> unit, Measures units) {
    return unit.apply(range.best()).text(units);
  }

  /** From the lowest to the highest credible value; empty if there is just one. */
  static String spread(Range range, DoubleFunction<Quantity> unit, Measures units) {
    String low = unit.apply(range.low()).text(units);
    String high = unit.apply(range.high()).text(units);
    return low.equals(high) ? "" : low + " to " + high;
  }
}
