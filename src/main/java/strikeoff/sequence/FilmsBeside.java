package strikeoff.sequence;

import java.util.List;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PlacedCells;
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
    return !liesOnAnother(one)
        && !liesOnAnother(other)
        && PlacedCells.of(one).comesNear(PlacedCells.of(other), off.mm());
  }

  private boolean liesOnAnother(Separation film) {
    return design.separations().stream().anyMatch(other -> liesOn(film, other));
  }

  private boolean liesOn(Separation film, Separation other) {
    if (other.paste().equals(film.paste()) || other.artwork().isEmpty()) {
      return false;
    }
    PlacedCells cells = PlacedCells.of(film);
    double cell = cells.cells().cellLength() * cells.cells().cellWidth() / SQUARE_MM_IN_CM;
    return cells.beside(List.of(PlacedCells.of(other)), 0) * cell <= unseen.squareCm();
  }
}
