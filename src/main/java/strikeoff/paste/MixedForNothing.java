package strikeoff.paste;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * Pastes that a step mixes and nothing prints.
 *
 * @param pastes their names
 * @param path of the mix step
 */
public record MixedForNothing(List<String> pastes, PlanPath path) implements Evidence {

  public MixedForNothing {
    pastes = List.copyOf(pastes);
  }
}
