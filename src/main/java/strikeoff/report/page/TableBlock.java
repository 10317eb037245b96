package strikeoff.report.page;

import java.util.List;

/**
 * A table with a caption; the first cell of a row is its head.
 *
 * @param listed its rows, of which some may be left out
 * @param remark a sentence below it, may be empty
 */
public record TableBlock(
    String caption, List<Column> columns, Listed<List<Cell>> listed, String remark) {

  public TableBlock {
    columns = List.copyOf(columns);
    for (List<Cell> row : listed.shown()) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(caption + ": a row of " + row.size() + " cells");
      }
    }
  }

  /** As many of the rows as a page shows. */
  public TableBlock(String caption, List<Column> columns, List<List<Cell>> rows, String remark) {
    this(caption, columns, Listed.of(rows, Listed.ROWS), remark);
  }

  public List<List<Cell>> rows() {
    return listed.shown();
  }

  /** The remark, and how many rows are left out. */
  public String note() {
    return listed.note(remark, "rows");
  }

  TableBlock cut(int times) {
    return new TableBlock(caption, columns, listed.cut(times), remark);
  }

  /** A column; numbers are set flush right. */
  public record Column(String head, boolean numeric) {

    public static Column words(String head) {
      return new Column(head, false);
    }

    public static Column number(String head) {
      return new Column(head, true);
    }
  }
}
