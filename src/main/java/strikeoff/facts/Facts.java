package strikeoff.facts;

import java.util.List;
import strikeoff.layout.Layout;
import strikeoff.plan.Evidence;
import strikeoff.timeline.Timeline;

/**
 * Everything derived from one plan, subject by subject. Nothing here says what is right or wrong.
 *
 * @param evidence the facts of all subjects that rules judge, in the order of derivation
 */
public record Facts(Layout layout, Timeline timeline, List<Evidence> evidence) {

  public Facts {
    evidence = List.copyOf(evidence);
  }
}
