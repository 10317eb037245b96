package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.List;
import strikeoff.plan.PrintedCells;

/**
 * Where the edges of a film's print are, or near to them, by its cells.
 *
 * @param near of each cell, row by row: whether an edge lies within the reach
 */
record CellEdges(PrintedCells cells, boolean[] near) {

  /**
   * @param reach how far from an edge still counts, in mm
   */
  static CellEdges of(PrintedCells cells, double reach) {
    return new CellEdges(cells, near(cells, reach));
  }

  /** The same with those of one grid in one, which is asked once for all of them. */
  static List<CellEdges> together(List<CellEdges> all) {
    List<CellEdges> together = new ArrayList<>();
    for (CellEdges one : all) {
      int grid = 0;
      while (grid < together.size() && !together.get(grid).isOnGridOf(one)) {
        grid++;
      }
      if (grid == together.size()) {
        together.add(one);
      } else {
        boolean[] near = together.get(grid).near.clone();
        for (int i = 0; i < near.length; i++) {
          near[i] |= one.near[i];
        }
        together.set(grid, new CellEdges(one.cells, near));
      }
    }
    return together;
  }

  private boolean isOnGridOf(CellEdges other) {
    return cells.columns() == other.cells.columns()
        && cells.rows() == other.cells.rows()
        && cells.cellLength() == other.cells.cellLength()
        && cells.cellWidth() == other.cells.cellWidth();
  }

  private static boolean[] near(PrintedCells cells, double reach) {
    boolean[] near = new boolean[cells.columns() * cells.rows()];
    int along = (int) Math.round(reach / cells.cellLength());
    int across = (int) Math.round(reach / cells.cellWidth());
    for (int row = 0; row < cells.rows(); row++) {
      for (int column = 0; column < cells.columns(); column++) {
        if (isEdge(cells, column, row)) {
          for (int y = row - across; y <= row + across; y++) {
            for (int x = column - along; x <= column + along; x++) {
              if (isIn(cells, x, y)) {
                near[y * cells.columns() + x] = true;
              }
            }
          }
        }
      }
    }
    return near;
  }

  /** True of a cell that prints and lies at bare ones, or does so in part. */
  private static boolean isEdge(PrintedCells cells, int column, int row) {
    int here = cells.share(column, row);
    return here > 0 && (here < PrintedCells.FULL || bareSides(cells, column, row) > 0);
  }

  /** How many of the four cells beside one print nothing. */
  static int bareSides(PrintedCells cells, int column, int row) {
    return (isBare(cells, column - 1, row) ? 1 : 0)
        + (isBare(cells, column + 1, row) ? 1 : 0)
        + (isBare(cells, column, row - 1) ? 1 : 0)
        + (isBare(cells, column, row + 1) ? 1 : 0);
  }

  private static boolean isBare(PrintedCells cells, int column, int row) {
    return isIn(cells, column, row) && cells.share(column, row) == 0;
  }

  private static boolean isIn(PrintedCells cells, int column, int row) {
    return column >= 0 && row >= 0 && column < cells.columns() && row < cells.rows();
  }

  /** True of a place in mm that lies within the reach of an edge. */
  boolean near(double x, double y) {
    int cell = cells.cellAt(x, y);
    return cell >= 0 && near[cell];
  }
}
