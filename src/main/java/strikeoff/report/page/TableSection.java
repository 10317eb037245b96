package strikeoff.report.page;

import java.util.List;

/**
 * Tables under one heading.
 *
 * @param remark a sentence before them, may be empty
 * @param listed the tables, of which some may be left out
 * @param cards true for small tables that stand side by side, to be cut out and pinned up
 */
public record TableSection(
    String id, String heading, String remark, Listed<TableBlock> listed, boolean cards) {

  /** As many of the tables as a page shows. */
  public TableSection(
      String id, String heading, String remark, List<TableBlock> tables, boolean cards) {
    this(id, heading, remark, Listed.of(tables, Listed.BLOCKS), cards);
  }

  public List<TableBlock> tables() {
    return listed.shown();
  }

  /** The remark, and how many tables are left out. */
  public String note() {
    return listed.note(remark, "tables");
  }

  TableSection cut(int times) {
    Listed<TableBlock> fewer = listed.cut(times);
    List<TableBlock> tables = fewer.shown().stream().map(table -> table.cut(times)).toList();
    return new TableSection(id, heading, remark, new Listed<>(tables, fewer.more()), cards);
  }
}
