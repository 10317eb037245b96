package strikeoff.paste;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * Pastes that are printed, though no step mixes them and the plan doesn't say that they were mixed
 * before.
 *
 * @param pastes their names
 * @param path of the first step that prints one of them
 */
public record NeverMixed(List<String> pastes, List<Related> related, PlanPath path)
    implements Evidence {

  public NeverMixed {
    pastes = List.copyOf(pastes);
    related = List.copyOf(related);
  }
}
