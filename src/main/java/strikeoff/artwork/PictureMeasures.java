package strikeoff.artwork;

import java.util.Optional;
import strikeoff.plan.Artwork;
import strikeoff.plan.Artwork.Fine;
import strikeoff.plan.Artwork.Reach;
import strikeoff.plan.Artwork.Tones;
import strikeoff.plan.PrintedCells;
import strikeoff.plan.Traced;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Pair;
import strikeoff.units.Share;

/**
 * What was measured of a picture, in points, and what is fine in it, at the size that it is
 * printed.
 *
 * @param open points that take paste
 * @param left first column that holds one; with {@code top}, {@code right} and {@code bottom} all
 *     zero if none does
 * @param right the column after the last one
 * @param bottom the row after the last one
 */
record PictureMeasures(
    int columns,
    int rows,
    long open,
    Tones tones,
    int left,
    int top,
    int right,
    int bottom,
    PrintedCells cells,
    Optional<MeshCount> halftone,
    Optional<Fine> fine,
    double mirrorApart,
    Optional<Traced> traced) {

  /**
   * Measures a picture.
   *
   * @param traced whether its edges are followed, for whoever draws it
   */
  static PictureMeasures of(OpenPoints exposure, Wanted wanted, boolean traced) {
    Bits bits = exposure.bits();
    int[] around = bits.around();
    double along = wanted.size().along().mm() / bits.columns();
    double across = wanted.size().across().mm() / bits.rows();
    // First, since dots that touch look like lines.
    Optional<MeshCount> halftone = Halftone.ruling(bits, along, across).map(MeshCount::new);
    return new PictureMeasures(
        bits.columns(),
        bits.rows(),
        bits.count(),
        exposure.tones(),
        around[0],
        around[1],
        around[2],
        around[3],
        CellCount.of(bits, wanted.size(), wanted.wrong()),
        halftone,
        halftone.isPresent()
            ? Optional.empty()
            : FineDetail.of(bits, along, across, wanted.wrong()),
        bits.mirrorApart(),
        traced ? Tracing.of(bits, along, across, wanted.wrong()) : Optional.empty());
  }

  /** Length of a point on a rectangle of that size, in mm. */
  double along(Pair size) {
    return size.along().mm() / columns;
  }

  /** Its width, in mm. */
  double across(Pair size) {
    return size.across().mm() / rows;
  }

  /** The longer side of a point, in mm. */
  double coarsest(Pair size) {
    return Math.max(along(size), across(size));
  }

  /** The same on its rectangle. A picture's first row is the far one. */
  Artwork artwork(Wanted wanted, Placing placing) {
    double along = wanted.size().along().mm() / columns;
    double across = wanted.size().across().mm() / rows;
    int first = wanted.wrong() ? columns - right : left;
    int last = wanted.wrong() ? columns - left : right;
    return new Artwork(
        wanted.file(),
        wanted.prints(),
        wanted.margin(),
        columns,
        rows,
        placing.drawn(),
        placing.says(),
        new Share((double) open / columns / rows),
        tones,
        open == 0
            ? Optional.empty()
            : Optional.of(
                new Reach(
                    new Length(first * along),
                    new Length(last * along),
                    new Length((rows - bottom) * across),
                    new Length((rows - top) * across))),
        cells,
        halftone,
        fine,
        new Share(mirrorApart),
        traced,
        Optional.empty(),
        new Artwork.Sized.ByDesign());
  }
}
