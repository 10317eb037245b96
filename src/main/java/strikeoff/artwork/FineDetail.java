package strikeoff.artwork;

import java.util.Optional;
import java.util.function.Consumer;
import strikeoff.document.GivenUp;
import strikeoff.plan.Artwork.Fine;
import strikeoff.plan.Artwork.Finest;
import strikeoff.units.Length;

/** The finest lines and gaps of a picture, its points and its specks. */
final class FineDetail {

  /**
   * More are a texture, which has neither lines nor specks: A2 closely hatched has half of them.
   */
  private static final long MOST_RUNS = 10_000_000;

  private final double point;
  private final int columns;
  private final int rows;
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
    this.point = Math.max(along, across);
    this.columns = bits.columns();
    this.rows = bits.rows();
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
    Widths lines = detail.upright.lines;
    Widths others = detail.flat.lines;
    return Optional.of(
        new Fine(
            new Length(detail.point),
            detail.finest(lines, others, along, across, wrong),
            detail.finest(detail.upright.gaps, detail.flat.gaps, along, across, wrong),
            (int) Math.round(lines.tips() + others.tips()),
            lines.tipLength() + others.tipLength(),
            detail.specks.byArea()));
  }

  private Optional<Finest> finest(
      Widths upright, Widths flat, double along, double across, boolean wrong) {
    if (!upright.any() && !flat.any()) {
      return Optional.empty();
    }
    boolean standing = upright.finest() <= flat.finest();
    double width = Math.min(upright.finest(), flat.finest());
    double x = standing ? upright.x() : flat.y();
    double y = standing ? upright.y() : flat.x();
    return Optional.of(
        new Finest(
            new Length(width),
            new Length(upright.upTo(width + point) + flat.upTo(width + point)),
            new Length((wrong ? columns - x : x) * along),
            new Length((rows - y) * across)));
  }
}
