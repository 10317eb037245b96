package strikeoff.report.page;

import java.util.List;

/**
 * A change of the plan that mends a finding, as lines to write.
 *
 * @param costs what comes of it, in words; may be empty
 */
public record MendLines(String costs, List<Line> lines) {

  public MendLines {
    lines = List.copyOf(lines);
  }

  /**
   * @param number of the line in the file as it is
   * @param gone true if it goes, false if it comes
   */
  public record Line(int number, boolean gone, String text) {}
}
