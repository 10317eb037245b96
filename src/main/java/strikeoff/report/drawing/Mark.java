package strikeoff.report.drawing;

import java.util.List;
import strikeoff.findings.Severity;

/**
 * A finding's number as it stands on the page, to be shown where it is on the cloth.
 *
 * @param placements names of the placements concerned
 */
public record Mark(int number, Severity severity, List<String> placements) {

  public Mark {
    placements = List.copyOf(placements);
  }
}
