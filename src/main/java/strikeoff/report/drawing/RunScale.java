package strikeoff.report.drawing;

import java.util.List;
import strikeoff.day.Moment;

/**
 * The clock along the charts of a run: the same hours on each day, so that days can be laid against
 * each other.
 *
 * @param from first minute of the day that is shown, a full hour
 * @param to last minute of the day that is shown, a full hour
 */
record RunScale(double from, double to) {

  /** What the hours take, in units of the drawing; with the names beside them a page's width. */
  static final double WIDTH = 1030;

  private static final double SIDE = 8;
  private static final double HOUR = 60;

  /** Less room than this, and a label of five digits runs into the next. */
  private static final double LEAST_LABEL = 44;

  /** From the earliest of the days' hours to the latest. */
  static RunScale of(List<PrintDay> days) {
    return new RunScale(
        days.stream().mapToDouble(d -> minute(d, d.from())).min().orElse(0),
        days.stream().mapToDouble(d -> minute(d, d.to())).max().orElse(HOUR));
  }

  private static double minute(PrintDay day, Moment moment) {
    return (moment.seconds() - Moment.of(day.number(), 0).seconds()) / 60.0;
  }

  /** Where a moment stands; one before or after the hours shown stands at their end. */
  double x(PrintDay day, Moment moment) {
    double shown = Math.max(from, Math.min(to, minute(day, moment)));
    return SIDE + (shown - from) * (WIDTH - 2 * SIDE) / (to - from);
  }

  /** Where the hours shown end. */
  double end() {
    return WIDTH - SIDE;
  }

  /** Every so many hours there is room for a label. */
  int labelledHours() {
    double hour = HOUR * (WIDTH - 2 * SIDE) / (to - from);
    return (int) Math.ceil(LEAST_LABEL / hour);
  }
}
