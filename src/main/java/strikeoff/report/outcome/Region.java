package strikeoff.report.outcome;

import strikeoff.document.Position;

/**
 * A stretch of a file.
 *
 * @param end just behind its last character; columns count UTF-16 code units from 1
 */
public record Region(Position start, Position end) {

  public Region {
    if (end.compareTo(start) < 0) {
      throw new IllegalArgumentException("ends at " + end + " before it begins at " + start);
    }
  }
}
