package strikeoff.sequence;

import java.util.Optional;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintedCells;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * Whether colours of a design can adjoin by their films' cells. That is known also of halftones,
 * whose edges are not followed.
 *
 * @param off how far a frame can be off
 * @param unseen less of a film beside another is seen by nobody
 */
record FilmsBeside(Design design, Length off, Area unseen) {

  private static final double SQUARE_MM_IN_CM = 100;

  /**
   * False where their films say that they print further apart than a frame can be off, or that one
   * of them lies all on another colour, which shows beside it and no ground.
   */
  boolean canAdjoin(Separation one, Separation other) {
    if (one.artwork().isEmpty() || other.artwork().isEmpty()) {
      return true;
    }
    return !liesOnAnother(one) && !liesOnAnother(other) && comeNear(one, other);
  }

  private boolean liesOnAnother(Separation film) {
    return design.separations().stream().anyMatch(other -> liesOn(film, other));
  }

  private boolean liesOn(Separation film, Separation other) {
    Optional<PrintedCells> under = other.artwork().map(Artwork::cells);
    if (other.paste().equals(film.paste()) || under.isEmpty()) {
      return false;
    }
    PrintedCells cells = film.artwork().orElseThrow().cells();
    double x = film.x().mm() - other.x().mm();
    double y = film.y().mm() - other.y().mm();
    long beside = 0;
    for (int row = 0; row < cells.rows(); row++) {
      for (int column = 0; column < cells.columns(); column++) {
        int share = cells.share(column, row);
        if (share > 0) {
          int its =
              under
                  .get()
                  .at(x + middle(column, cells.cellLength()), y + middle(row, cells.cellWidth()));
          beside += Math.max(0, share - its);
        }
      }
    }
    double squareMm = (double) beside / PrintedCells.FULL * cells.cellLength() * cells.cellWidth();
    return squareMm <= unseen.squareCm() * SQUARE_MM_IN_CM;
  }

  private boolean comeNear(Separation one, Separation other) {
    PrintedCells cells = one.artwork().orElseThrow().cells();
    PrintedCells others = other.artwork().orElseThrow().cells();
    double x = one.x().mm() - other.x().mm();
    double y = one.y().mm() - other.y().mm();
    int along = steps(others.cellLength());
    int across = steps(others.cellWidth());
    for (int row = 0; row < cells.rows(); row++) {
      for (int column = 0; column < cells.columns(); column++) {
        if (cells.share(column, row) > 0
            && prints(
                others,
                x + middle(column, cells.cellLength()),
                y + middle(row, cells.cellWidth()),
                along,
                across)) {
          return true;
        }
      }
    }
    return false;
  }

  /** How many cells further one may lie for a point of both to be no further off than a frame. */
  private int steps(double cell) {
    return 1 + (int) Math.ceil(off.mm() / cell);
  }

  private static boolean prints(PrintedCells cells, double x, double y, int along, int across) {
    for (int i = -along; i <= along; i++) {
      for (int j = -across; j <= across; j++) {
        if (cells.at(x + i * cells.cellLength(), y + j * cells.cellWidth()) > 0) {
          return true;
        }
      }
    }
    return false;
  }

  private static double middle(int cell, double side) {
    return (cell + 0.5) * side;
  }
}
