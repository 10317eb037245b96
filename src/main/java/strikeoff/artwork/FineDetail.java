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

    Pass(double along, double across) {
      lines = new Widths(along, across);
      gaps = new Widths(along, across);
      lineStrokes = new Strokes(lines.mostPoints(), lines.fewestRows(), lines::take);
      gapStrokes = new Strokes(gaps.mostPoints(), gaps.fewestRows(), gaps::take);
    }

    /** Follows all strokes; what becomes of runs besides is up to whoever asks. */
    void over(Bits bits, Consumer<RowRuns> besides) {
      RowRuns runs = new RowRuns();
      RowRuns between = new RowRuns();
      for (int y = 0; y <= bits.rows(); y++) {
        GivenUp.ifAsked();
        // After the last row comes one with nothing, which ends all.
        runs.clear();
        if (y < bits.rows()) {
          runs.of(bits, y);
        }
        between.between(runs);
        besides.accept(runs);
        runs = lineStrokes.row(y, runs);
        between = gapStrokes.row(y, between);
      }
    }
  }

  private FineDetail(Bits bits, Bits turned, double along, double across) {
    this.upright = new Pass(along, across);
    this.flat = new Pass(across, along);
    this.specks = new Specks(along * across);
    upright.over(bits, specks::row);
    flat.over(turned, runs -> {});
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
    Bits turned = bits.turned();
    if (bits.runs() > MOST_RUNS || turned.runs() > MOST_RUNS) {
      return Optional.empty();
    }
    FineDetail detail = new FineDetail(bits, turned, along, across);
    Pass upright = detail.upright;
    Pass flat = detail.flat;
    return Optional.of(
        new Fine(
            new Length(Math.max(along, across)),
            Widths.finest(upright.lines, flat.lines, bits, wrong),
            Widths.finest(upright.gaps, flat.gaps, bits, wrong),
            (int) Math.round(upright.lines.tips() + flat.lines.tips()),
            upright.lines.tipLength() + flat.lines.tipLength(),
            detail.specks.byArea()));
  }
}
