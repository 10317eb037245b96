package strikeoff.report.page;

import java.util.List;

/**
 * Tables under one heading.
 *
 * @param note a sentence before them, may be empty
 * @param cards true for small tables that stand side by side, to be cut out and pinned up
 */
public record TableSection(
    String id, String heading, String note, List<Table> tables, boolean cards) {

  public TableSection {
    tables = List.copyOf(tables);
  }
}
