package strikeoff.start;

import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Pair;

/**
 * Where copies lie on the cloth so that they lie in its middle, or along its edges; all in mm.
 *
 * @param pitch from one copy to the next, each way
 * @param alongCount how many lie along the cloth
 * @param acrossCount how many lie across it: rows, or the two edges
 * @param start where the first one begins along the cloth
 * @param near where the first one begins across it
 */
public record Spread(
    PrintKind printed,
    double length,
    double width,
    double along,
    double across,
    double pitch,
    int alongCount,
    int acrossCount,
    double start,
    double near) {

  /**
   * As many copies as there is room for.
   *
   * @param length of the cloth
   * @param pitch for borders, the length of a repeat
   */
  public static Spread of(
      PrintKind printed, Length length, Length width, Pair motif, Length pitch, Measures units) {
    double margin = margin(units);
    double step = pitch.mm();
    double along = motif.along().mm();
    double across = motif.across().mm();
    // A repeat takes its length; a copy at a pitch takes no more than itself at the end.
    double last = printed.isBorder() ? step : along;
    int alongCount = fitting(length.mm() - 2 * margin - last, step);
    boolean rows = printed == PrintKind.SMALL_REPEATS;
    int acrossCount =
        rows
            ? fitting(width.mm() - 2 * margin - across, step)
            : printed == PrintKind.BORDERS ? 2 : 1;
    double span = (alongCount - 1) * step + last;
    double deep = rows ? (acrossCount - 1) * step + across : across;
    return new Spread(
        printed,
        length.mm(),
        width.mm(),
        along,
        across,
        step,
        alongCount,
        acrossCount,
        Math.floor((length.mm() - span) / 2),
        printed.isBorder() ? margin : Math.floor((width.mm() - deep) / 2));
  }

  /** What stays free along each edge of the cloth. */
  static double margin(Measures units) {
    return RoundSizes.of(new PlanNumbers(units)).margin() / 2;
  }

  private static int fitting(double room, double step) {
    // Lengths that differ by less than half a millimetre are the same.
    return room < -0.5 ? 0 : 1 + (int) Math.floor((room + 0.5) / step);
  }

  /** How many copies there are. */
  public int count() {
    return alongCount * acrossCount;
  }

  /** True if the copies fit between the edges, and those of two edges beside each other. */
  public boolean fits() {
    double deep = printed == PrintKind.BORDERS ? 2 * across + 3 * near : across + 2 * near;
    return count() > 0 && (!printed.isBorder() || deep <= width + 0.5);
  }

  /** The same with fewer copies in a row, from the same start. */
  Spread first(int count) {
    return new Spread(
        printed, length, width, along, across, pitch, count, acrossCount, start, near);
  }

  /** How wide a table has to be for frames of that width, with the cloth in its middle. */
  public double tableWidth(double frame) {
    double beyond = (frame - across) / 2 - near;
    boolean far = printed == PrintKind.FAR_BORDER;
    double last = far ? width - near - across : near + (acrossCount - 1) * pitch;
    double beyondFar = printed.isBorder() ? beyond : last + across + (frame - across) / 2 - width;
    return width + 2 * Math.max(0, Math.max(beyond, beyondFar));
  }

  /** True if frames of that size come to lie on prints beside them. */
  boolean crowded(Pair frame) {
    boolean alongside = alongCount > 1 && pitch < (frame.along().mm() + along) / 2;
    double rows = printed == PrintKind.BORDERS ? width - 2 * near - across : pitch;
    return alongside || acrossCount > 1 && rows < (frame.across().mm() + across) / 2;
  }
}
