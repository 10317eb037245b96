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

  /** What to change, as an instruction without a full stop. */
  public String mending() {
    String room = "ake room for more of " + anchor;
    return anchors == 0
        ? "M" + room
        : "Write `which: 1" + (anchors == 1 ? "" : "-" + anchors) + "` at most, or m" + room;
  }

  /** The numbers beyond them, as people say them. */
  public String beyondText() {
    return Numbering.brief(beyond);
  }
}
