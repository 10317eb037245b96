package strikeoff.report.outcome;

import java.util.List;
import java.util.Optional;

/**
 * A change of the plan's text that was tried: made literally, the finding is gone and no new stop
 * has come.
 *
 * @param parts stretches of the file that change, all of them together
 * @param end when the run then ends, if that is another minute than before
 * @param risks what the plan then risks and did not before, a few words each
 */
public record Fix(List<Part> parts, Optional<String> end, List<String> risks) {

  public Fix {
    parts = List.copyOf(parts);
    risks = List.copyOf(risks);
  }

  /**
   * @param region what goes; empty where nothing does
   * @param text what is written there instead
   */
  public record Part(Region region, String text) {}
}
