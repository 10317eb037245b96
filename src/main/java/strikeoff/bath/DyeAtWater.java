package strikeoff.bath;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Step;

/**
 * Printed dye, the first rinse or wash after it, and what fixes it before or after that.
 *
 * @param dyes the pastes
 * @param impressions how many prints of them
 * @param fixes how many soaks, batches and steamings come before the water
 * @param washing the rinse or the wash
 * @param late the fix step that comes after it; empty if none does
 * @param fixFirst ways to fix before the water; empty if no fix step comes after it
 * @param marks placements concerned
 * @param related the print and the fix step
 * @param path of the rinse or the wash
 */
public record DyeAtWater(
    List<String> dyes,
    int impressions,
    int fixes,
    Step washing,
    Optional<Step.Fix> late,
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

  /** The number of the rinse or the wash. */
  public int step() {
    return washing.number();
  }

  /** The number of the fix step that comes after it, or 0. */
  public int fixStep() {
    return late.map(Step::number).orElse(0);
  }
}
