package strikeoff.bath;

import java.util.List;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * Printed dye, the first rinse or wash after it, and what fixes it before or after that.
 *
 * @param dyes the pastes
 * @param impressions how many prints of them
 * @param fixes how many soaks, batches and steamings come before the water
 * @param water the rinse or the wash, in words
 * @param step its number
 * @param fix the fix step that comes after it, in words; empty if none does
 * @param fixStep its number, or 0
 * @param fixFirst ways to fix before the water; empty if no fix step comes after it
 * @param marks placements concerned
 * @param related the print and the fix step
 * @param path of the rinse or the wash
 */
public record DyeAtWater(
    List<String> dyes,
    int impressions,
    int fixes,
    String water,
    int step,
    String fix,
    int fixStep,
    List<List<Edit>> fixFirst,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public DyeAtWater {
    dyes = List.copyOf(dyes);
    fixFirst = List.copyOf(fixFirst);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
