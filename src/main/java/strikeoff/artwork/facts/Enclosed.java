package strikeoff.artwork.facts;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintedCells;

/**
 * What an outline encloses, by its film's cells: whatever can't be reached from the film's border
 * without crossing a line.
 *
 * @param cells of the outline
 * @param outside those reached from the border, row by row
 */
record Enclosed(PrintedCells cells, boolean[] outside) {

  /**
   * How well what a fill and all other fills of a design leave bare is what one of its outlines on
   * the same rectangle encloses; a cell that is mostly bare counts.
   *
   * @return what is both, as a share of what is either, of the outline that fits best
   */
  static double bareIn(Design design, Separation fill) {
    List<PrintedCells> fills =
        design.separations().stream()
            .filter(s -> !s.key() && s.artwork().isPresent() && s.fillsRectangleOf(fill))
            .map(s -> s.artwork().orElseThrow().cells())
            .toList();
    return design.separations().stream()
        .filter(s -> s.key() && s.artwork().isPresent() && s.fillsRectangleOf(fill))
        .mapToDouble(s -> of(s.artwork().orElseThrow().cells()).agrees(fills))
        .max()
        .orElse(0);
  }

  private static Enclosed of(PrintedCells cells) {
    int columns = cells.columns();
    int rows = cells.rows();
    boolean[] outside = new boolean[columns * rows];
    Deque<Integer> open = new ArrayDeque<>();
    for (int i = 0; i < outside.length; i++) {
      int column = i % columns;
      int row = i / columns;
      if (column == 0 || row == 0 || column == columns - 1 || row == rows - 1) {
        reach(cells, column, row, outside, open);
      }
    }
    while (!open.isEmpty()) {
      int at = open.remove();
      int column = at % columns;
      int row = at / columns;
      reach(cells, column - 1, row, outside, open);
      reach(cells, column + 1, row, outside, open);
      reach(cells, column, row - 1, outside, open);
      reach(cells, column, row + 1, outside, open);
    }
    return new Enclosed(cells, outside);
  }

  private static void reach(
      PrintedCells cells, int column, int row, boolean[] outside, Deque<Integer> open) {
    if (column >= 0
        && row >= 0
        && column < cells.columns()
        && row < cells.rows()
        && cells.share(column, row) == 0
        && !outside[row * cells.columns() + column]) {
      outside[row * cells.columns() + column] = true;
      open.add(row * cells.columns() + column);
    }
  }

  private double agrees(List<PrintedCells> fills) {
    int both = 0;
    int either = 0;
    for (int row = 0; row < cells.rows(); row++) {
      for (int column = 0; column < cells.columns(); column++) {
        double x = (column + 0.5) * cells.cellLength();
        double y = (row + 0.5) * cells.cellWidth();
        boolean in = !outside[row * cells.columns() + column];
        boolean bare = fills.stream().allMatch(f -> 2 * f.at(x, y) < PrintedCells.FULL);
        // The lines themselves are neither.
        if (cells.share(column, row) == 0 && (in || bare)) {
          either++;
          both += in && bare ? 1 : 0;
        }
      }
    }
    return either == 0 ? 0 : (double) both / either;
  }
}
