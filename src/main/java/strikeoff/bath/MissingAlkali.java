package strikeoff.bath;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * Dye that is batched or steamed with no alkali: neither in its paste nor from a soak.
 *
 * @param how batch or steam
 * @param dyes the pastes without alkali
 * @param path of the fix step
 */
public record MissingAlkali(
    int step, String how, List<String> dyes, List<Related> related, PlanPath path)
    implements Evidence {

  public MissingAlkali {
    dyes = List.copyOf(dyes);
    related = List.copyOf(related);
  }
}
