package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.List;
import strikeoff.plan.PrintedCells;

/** The parts of a film's print that hang together, cell by cell, corners included. */
final class CellParts {

  private CellParts() {}

  /**
   * The box of cells around a part, in mm from the film's left near corner.
   *
   * @param length of what prints in it: a line that ends in a cell fills as much of that as its
   *     length in it, beside the cell before, so that ends are known to less than a cell
   * @param width the same across
   * @param area that prints, in mm²
   * @param deep true if it comes further in from its border somewhere than the strip is wide
   * @param cross true if its middle lines print from end to end and little else does
   */
  record Part(
      double left,
      double right,
      double near,
      double far,
      double length,
      double width,
      double area,
      boolean deep,
      boolean cross) {

    /** The longer side of what prints in it. */
    double extent() {
      return Math.max(length, width);
    }
  }

  /** All parts, in the order of their first cells. */
  static List<Part> of(PrintedCells cells, double strip) {
    int columns = cells.columns();
    boolean[] seen = new boolean[columns * cells.rows()];
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < seen.length; i++) {
      if (!seen[i] && cells.share(i % columns, i / columns) > 0) {
        parts.add(part(cells, i, seen, strip));
      }
    }
    return parts;
  }

  private static Part part(PrintedCells cells, int first, boolean[] seen, double strip) {
    int columns = cells.columns();
    int[] box = {first % columns, first % columns, first / columns, first / columns};
    boolean deep = false;
    double area = 0;
    List<Integer> all = new ArrayList<>(List.of(first));
    seen[first] = true;
    for (int i = 0; i < all.size(); i++) {
      int at = all.get(i);
      int column = at % columns;
      int row = at / columns;
      box[0] = Math.min(box[0], column);
      box[1] = Math.max(box[1], column);
      box[2] = Math.min(box[2], row);
      box[3] = Math.max(box[3], row);
      area += cells.share(column, row);
      deep |= inside(cells, column, row, strip);
      for (int y = Math.max(0, row - 1); y <= Math.min(cells.rows() - 1, row + 1); y++) {
        for (int x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
          int next = y * columns + x;
          if (!seen[next] && cells.share(x, y) > 0) {
            seen[next] = true;
            all.add(next);
          }
        }
      }
    }
    double left = box[0] * cells.cellLength();
    double right = Math.min(cells.length(), (box[1] + 1) * cells.cellLength());
    double near = box[2] * cells.cellWidth();
    double far = Math.min(cells.width(), (box[3] + 1) * cells.cellWidth());
    int[] along = new int[box[1] - box[0] + 1];
    int[] across = new int[box[3] - box[2] + 1];
    for (int at : all) {
      int share = cells.share(at % columns, at / columns);
      along[at % columns - box[0]] += share;
      across[at / columns - box[2]] += share;
    }
    return new Part(
        left,
        right,
        near,
        far,
        right - left - bareAtEnds(along) * cells.cellLength(),
        far - near - bareAtEnds(across) * cells.cellWidth(),
        area * cells.cellLength() * cells.cellWidth() / PrintedCells.FULL,
        deep,
        isCross(cells, box, area / PrintedCells.FULL));
  }

  /**
   * How much of its first and its last cell a part leaves bare, together.
   *
   * @param prints of each cell along it
   */
  private static double bareAtEnds(int[] prints) {
    int last = prints.length - 1;
    return last == 0 ? 0 : bare(prints[0], prints[1]) + bare(prints[last], prints[last - 1]);
  }

  private static double bare(int end, int beside) {
    return Math.max(0, 1 - (double) end / beside);
  }

  /** A cross has so many cells along a side at least; with fewer it may be anything. */
  private static final int FEWEST_CELLS = 4;

  /** It fills at most so much of its box, with a ring round its middle; a dot or a leaf more. */
  private static final double MOST_FILLED = 0.35;

  private static boolean isCross(PrintedCells cells, int[] box, double filled) {
    int wide = box[1] - box[0] + 1;
    int high = box[3] - box[2] + 1;
    return Math.abs(wide - high) <= 1
        && Math.min(wide, high) >= FEWEST_CELLS
        && filled <= MOST_FILLED * wide * high
        && (isLine(cells, box, (box[2] + box[3]) / 2, true)
            || isLine(cells, box, (box[2] + box[3] + 1) / 2, true))
        && (isLine(cells, box, (box[0] + box[1]) / 2, false)
            || isLine(cells, box, (box[0] + box[1] + 1) / 2, false))
        && isBareInCorners(cells, box);
  }

  /** True if all cells of a row of the box print, or of a column. */
  private static boolean isLine(PrintedCells cells, int[] box, int at, boolean row) {
    int from = row ? box[0] : box[2];
    int to = row ? box[1] : box[3];
    for (int i = from; i <= to; i++) {
      if (cells.share(row ? i : at, row ? at : i) == 0) {
        return false;
      }
    }
    return true;
  }

  private static boolean isBareInCorners(PrintedCells cells, int[] box) {
    for (int column : new int[] {box[0], box[1]}) {
      for (int row : new int[] {box[2], box[3]}) {
        if (cells.share(column, row) > 0) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean inside(PrintedCells cells, int column, int row, double strip) {
    double x = (column + 0.5) * cells.cellLength();
    double y = (row + 0.5) * cells.cellWidth();
    return Math.min(Math.min(x, cells.length() - x), Math.min(y, cells.width() - y)) > strip;
  }
}
