package strikeoff.layout;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * Placements that are set from those of another arrangement.
 *
 * @param anchors how many placements the anchor's arrangement has
 * @param beyond numbers they are to be set from that it doesn't reach
 */
public record Anchoring(
    String arrangement, String anchor, int anchors, List<Integer> beyond, PlanPath path)
    implements Evidence {

  public Anchoring {
    beyond = List.copyOf(beyond);
  }

  /** How many of them have no anchor. */
  public int unanchored() {
    return beyond.size();
  }
}
