package strikeoff.artwork;

import java.util.Optional;
import java.util.function.Consumer;
import strikeoff.document.GivenUp;
import strikeoff.plan.Artwork.Fine;
import strikeoff.units.Length;

/** The finest lines and gaps of a picture, its points and its specks. */
final class FineDetail {

  /**
   * More are a texture, which has neither lines nor specks: A2 closely hatched has half of them.
   */
  private static final long MOST_RUNS = 10_000_000;

  private final Pass flat;
  private final Pass upright;
  private final Specks specks;

  /** Strokes along one of the two sides, on cloth. */
  private static final class Pass {

    private final Widths lines;
    private final Widths gaps;
    private final Strokes lineStrokes;
    private final Strokes gapStrokes;
    private RowRuns runs = new RowRuns();
    private RowRuns between = new RowRuns();

    Pass(double along, double across) {
      lines = new Widths(along, across);
      gaps = new Widths(along, across);
      lineStrokes = new Strokes(lines.mostPoints(), lines.fewestRows(), lines::take);
      gapStrokes = new Strokes(gaps.mostPoints(), gaps.fewestRows(), gaps::take);
    }

    /**
     * Follows the strokes of some rows; what becomes of runs besides is up to whoever asks.
     *
     * @param first where the first of them stands in all
     */
    void over(Bits bits, int first, Consumer<RowRuns> besides) {
      for (int y = 0; y < bits.rows(); y++) {
        GivenUp.ifAsked();
        runs.of(bits, y);
        row(first + y, besides);
      }
    }

    /** After the last row comes one with nothing, which ends all. */
    void end(int rows, Consumer<RowRuns> besides) {
      runs.clear();
      row(rows, besides);
    }

    private void row(int y, Consumer<RowRuns> besides) {
      between.between(runs);
      besides.accept(runs);
      runs = lineStrokes.row(y, runs);
      between = gapStrokes.row(y, between);
    }
  }

  private FineDetail(Bits bits, double along, double across) {
    this.upright = new Pass(along, across);
    this.flat = new Pass(across, along);
    this.specks = new Specks(along * across);
    upright.over(bits, 0, specks::row);
    upright.end(bits.rows(), specks::row);
    for (int x = 0; x < bits.columns(); x += Long.SIZE) {
      flat.over(bits.turned(x), x, runs -> {});
    }
    flat.end(bits.columns(), runs -> {});
  }

  /**
   * Measures a picture.
   *
   * @param along mm from one point of a row to the next, on the cloth
   * @param across mm from one row to the next
   * @param wrong true if it is seen through its back
   * @return empty if it is a texture all over
   */
  static Optional<Fine> of(Bits bits, double along, double across, boolean wrong) {
    if (bits.runs() > MOST_RUNS || bits.runsAcross() > MOST_RUNS) {
      return Optional.empty();
    }
    FineDetail detail = new FineDetail(bits, along, across);
    Pass upright = detail.upright;
    Pass flat = detail.flat;
    return Optional.of(
        new Fine(
            new Length(Math.max(along, across)),
            KeptWidths.finest(upright.lines.kept(), flat.lines.kept(), bits, wrong),
            KeptWidths.finest(upright.gaps.kept(), flat.gaps.kept(), bits, wrong),
            (int) Math.round(upright.lines.tips() + flat.lines.tips()),
            upright.lines.tipLength() + flat.lines.tipLength(),
            detail.specks.byArea()));
  }
}
