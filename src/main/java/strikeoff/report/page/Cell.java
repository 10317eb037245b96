package strikeoff.report.page;

import gg.jte.Content;

/**
 * A table's cell.
 *
 * @param picture a small drawing before the words; null for none
 * @param note a quieter line below the words; may be empty
 */
public record Cell(Content picture, String words, String note) {

  public static Cell of(String words) {
    return new Cell(null, words, "");
  }

  public static Cell of(String words, String note) {
    return new Cell(null, words, note);
  }

  public static Cell of(Content picture, String words, String note) {
    return new Cell(picture, words, note);
  }
}
