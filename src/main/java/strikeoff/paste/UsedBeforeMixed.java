package strikeoff.paste;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.timeline.Moment;

/**
 * Pastes that are printed before they are mixed.
 *
 * @param pastes their names
 * @param firstUse when the first of them is wanted
 * @param ready when the last of them is ready
 * @param path of the first step that prints one of them too early
 */
public record UsedBeforeMixed(
    List<String> pastes, Moment firstUse, Moment ready, List<Related> related, PlanPath path)
    implements Evidence {

  public UsedBeforeMixed {
    pastes = List.copyOf(pastes);
    related = List.copyOf(related);
  }
}
