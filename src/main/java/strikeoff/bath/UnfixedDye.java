package strikeoff.bath;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * Dye that no soak, batch or steam follows.
 *
 * @param dyes the pastes
 * @param impressions how many prints of them
 * @param marks placements concerned
 * @param path of the last print step with such dye
 */
public record UnfixedDye(List<String> dyes, int impressions, List<String> marks, PlanPath path)
    implements Evidence {

  public UnfixedDye {
    dyes = List.copyOf(dyes);
    marks = List.copyOf(marks);
  }
}
