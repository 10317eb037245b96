package strikeoff.layout;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * A placement to be set from an anchor that isn't there.
 *
 * @param anchors how many placements the anchor's arrangement has
 * @param missing numbers it was to be set from that don't exist
 */
public record AnchorMissing(
    String arrangement, String anchor, int anchors, List<Integer> missing, PlanPath path)
    implements Evidence {

  public AnchorMissing {
    missing = List.copyOf(missing);
  }

  /** What to change, as an instruction without a full stop. */
  public String mending() {
    String room = "ake room for more of " + anchor;
    return anchors == 0
        ? "M" + room
        : "Write `which: 1" + (anchors == 1 ? "" : "-" + anchors) + "` at most, or m" + room;
  }

  /** The missing numbers, as people say them. */
  public String missingText() {
    return Numbering.brief(missing);
  }
}
