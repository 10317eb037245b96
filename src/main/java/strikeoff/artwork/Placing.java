package strikeoff.artwork;

import java.util.Optional;
import strikeoff.artwork.Picture.Grid;
import strikeoff.units.Length;
import strikeoff.units.Numbers;
import strikeoff.units.Pair;

/**
 * How a picture lies in its separation's rectangle.
 *
 * @param alongMargin points cut off left and right
 * @param acrossMargin points cut off above and below
 * @param drawn true of a drawing
 * @param says how large the rest is by its resolution; empty if nobody says one, when points are
 *     taken for square and for so large that the rest is as long as is wanted
 */
record Placing(int alongMargin, int acrossMargin, boolean drawn, Optional<Pair> says) {

  private static final double MM_PER_INCH = 25.4;

  static Placing of(Picture picture, Wanted wanted) throws UnreadablePicture {
    Optional<Grid> said = wanted.pointsPerMm().map(Grid::square).or(picture::grid);
    if (said.isPresent() && !said.get().canBe()) {
      double most = Math.max(said.get().along(), said.get().across());
      throw new UnreadablePicture(
          "this file says that it has "
              + Numbers.plain(most * MM_PER_INCH, 0)
              + " points an inch, and films have at most "
              + Numbers.plain(Resolution.MOST_PER_MM * MM_PER_INCH, 0)
              + "; save it again, or write the “resolution” that it comes out at, as 600/in");
    }
    double margins = 2 * wanted.margin().mm();
    Grid grid =
        said.orElseGet(
            () -> Grid.square(picture.columns() / (wanted.size().along().mm() + margins)));
    long along = Math.round(wanted.margin().mm() * grid.along());
    long across = Math.round(wanted.margin().mm() * grid.across());
    if (2 * along >= picture.columns() || 2 * across >= picture.rows()) {
      throw new UnreadablePicture(
          "its margin, cut off all round, leaves nothing of this picture; write a smaller one");
    }
    return new Placing(
        (int) along,
        (int) across,
        picture instanceof SvgDrawing,
        said.map(
            g ->
                new Pair(
                    new Length((picture.columns() - 2 * along) / g.along()),
                    new Length((picture.rows() - 2 * across) / g.across()))));
  }
}
