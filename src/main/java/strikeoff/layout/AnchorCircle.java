package strikeoff.layout;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * Arrangements that are set from each other, or keep clear of each other, in a ring, so that none
 * has a place.
 *
 * @param members each waits for the next one, the last for the first
 * @param waiting others that wait for one of a ring
 */
public record AnchorCircle(List<String> members, List<String> waiting, PlanPath path)
    implements Evidence {

  public AnchorCircle {
    members = List.copyOf(members);
    waiting = List.copyOf(waiting);
  }
}
