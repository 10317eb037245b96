package strikeoff.report.page;

/**
 * One of the main figures in the head of a page.
 *
 * @param note a quieter line below it; may be empty
 */
public record Figure(String label, String value, String note) {

  public Figure(String label, String value) {
    this(label, value, "");
  }
}
