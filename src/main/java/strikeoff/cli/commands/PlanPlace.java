package strikeoff.cli.commands;

import java.io.IOException;
import strikeoff.cli.files.ReportFolder;

/** A plan's number in the batch, and its page. */
final class PlanPlace {
  private final int number;
  private final String page;
  private boolean closed;

  PlanPlace(int number, String page) {
    this.number = number;
    this.page = page;
  }

  /** From 1. */
  int number() {
    return number;
  }

  String page() {
    return page;
  }

  /**
   * Writes the page. What comes after the last one comes too late: the plan was given up.
   *
   * @throws IOException if it can't be written; then there is no page
   */
  synchronized void write(ReportFolder folder, byte[] utf8, boolean last) throws IOException {
    if (!closed) {
      closed = last;
      folder.write(page, utf8);
    }
  }
}
