package strikeoff.report.page;

import java.util.List;

/**
 * A table with a caption; the first cell of a row is its head.
 *
 * @param note a sentence below it, may be empty
 */
public record Table(String caption, List<Column> columns, List<List<Cell>> rows, String note) {

  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<Cell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(caption + ": a row of " + row.size() + " cells");
      }
    }
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
