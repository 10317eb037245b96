package strikeoff.report.page;

/**
 * The sheets of a batch at a glance.
 *
 * @param sentence how many plans have sheets, and how many of them aren't printable
 */
public record SheetsIndexPage(Head head, String title, String sentence, Listed<Row> rows) {

  /** The same with so many times fewer plans. */
  public SheetsIndexPage cut(int times) {
    return new SheetsIndexPage(head, title, sentence, rows.cut(times));
  }

  /**
   * One plan.
   *
   * @param link address of its sheets, relative; empty if it has none
   * @param verdict a class for the style sheet
   * @param finishes when its run ends; empty if it doesn't run
   * @param trouble why it couldn't be judged; empty if it was
   */
  public record Row(
      String file,
      String title,
      String link,
      String verdict,
      String verdictWords,
      String finishes,
      String trouble) {}
}
