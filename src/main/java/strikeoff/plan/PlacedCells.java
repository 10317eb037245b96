package strikeoff.plan;

import java.util.List;
import strikeoff.document.GivenUp;
import strikeoff.plan.Design.Separation;

/**
 * A film's cells where they lie on its design: how films lie on each other without their points,
 * halftones too.
 *
 * @param x of their near left corner on the design, in mm
 * @param y of the same
 */
public record PlacedCells(PrintedCells cells, double x, double y) {

  /** Those of a film, which the separation has. */
  public static PlacedCells of(Separation film) {
    return new PlacedCells(film.artwork().orElseThrow().cells(), film.x().mm(), film.y().mm());
  }

  /** Those of some films. */
  public static List<PlacedCells> of(List<Separation> films) {
    return films.stream().map(PlacedCells::of).toList();
  }

  /** How much the film prints, in cells. */
  public double printed() {
    long sum = 0;
    for (int row = 0; row < cells.rows(); row++) {
      for (int column = 0; column < cells.columns(); column++) {
        sum += cells.share(column, row);
      }
    }
    return (double) sum / PrintedCells.FULL;
  }

  /**
   * How much of the film lies beside others, further away than that, in its cells. What others
   * print of a cell is taken to lie beside each other, and to lie on what the film prints of it.
   */
  public double beside(List<PlacedCells> others, double mm) {
    double beside = 0;
    for (int row = 0; row < cells.rows(); row++) {
      GivenUp.ifAsked();
      for (int column = 0; column < cells.columns(); column++) {
        int share = cells.share(column, row);
        if (share > 0) {
          int under = 0;
          for (PlacedCells other : others) {
            under += other.most(middleX(column), middleY(row), other.along(mm), other.across(mm));
          }
          beside += Math.max(0, share - under);
        }
      }
    }
    return beside / PrintedCells.FULL;
  }

  /** True if points of both may be no further apart than that. */
  public boolean comesNear(PlacedCells other, double mm) {
    // Points lie anywhere in their cells.
    int along = 1 + other.along(mm);
    int across = 1 + other.across(mm);
    for (int row = 0; row < cells.rows(); row++) {
      GivenUp.ifAsked();
      for (int column = 0; column < cells.columns(); column++) {
        if (cells.share(column, row) > 0
            && other.most(middleX(column), middleY(row), along, across) > 0) {
          return true;
        }
      }
    }
    return false;
  }

  private double middleX(int column) {
    return x + (column + 0.5) * cells.cellLength();
  }

  private double middleY(int row) {
    return y + (row + 0.5) * cells.cellWidth();
  }

  private int along(double mm) {
    return (int) Math.ceil(mm / cells.cellLength());
  }

  private int across(double mm) {
    return (int) Math.ceil(mm / cells.cellWidth());
  }

  /** The most that the film prints of a cell no further than so many from a place on the design. */
  private int most(double placeX, double placeY, int along, int across) {
    int most = 0;
    for (int i = -along; i <= along && most < PrintedCells.FULL; i++) {
      for (int j = -across; j <= across && most < PrintedCells.FULL; j++) {
        most =
            Math.max(
                most,
                cells.at(placeX - x + i * cells.cellLength(), placeY - y + j * cells.cellWidth()));
      }
    }
    return most;
  }
}
