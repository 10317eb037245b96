package strikeoff.bath;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * Dye that a rinse or a wash takes out before it is fixed; what would fix it comes too late.
 *
 * @param dyes the pastes
 * @param impressions how many prints of them
 * @param water the rinse or the wash, in words
 * @param step its number
 * @param fix the fix step that comes after it, in words
 * @param fixStep its number
 * @param marks placements concerned
 * @param related the print and the fix step
 * @param path of the rinse or the wash
 */
public record WashedUnfixed(
    List<String> dyes,
    int impressions,
    String water,
    int step,
    String fix,
    int fixStep,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public WashedUnfixed {
    dyes = List.copyOf(dyes);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
