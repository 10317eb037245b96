package strikeoff.bath;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Step;

/**
 * Dye that was printed, and what follows it.
 *
 * @param dyes the pastes
 * @param impressions how many prints of them
 * @param fixes how many soaks, batches and steamings follow
 * @param lacks what would fix it
 * @param waterStep the next step that takes dye out which nothing has fixed
 * @param heatStep number of a step that heats it dry afterwards
 * @param marks placements concerned
 * @param path of the last print step with such dye
 */
public record DyePrinted(
    List<String> dyes,
    int impressions,
    int fixes,
    Lacks lacks,
    Optional<Step> waterStep,
    Optional<Integer> heatStep,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  /** What would fix a print; with alkali in cloth or paste a soak would only wash that out. */
  public enum Lacks {
    STEAM,
    FIXING_OF_SODA_IN_CLOTH,
    FIXING_OF_ALKALI_IN_PASTE,
    ALKALI_AND_FIXING
  }

  public DyePrinted {
    dyes = List.copyOf(dyes);
    marks = List.copyOf(marks);
  }
}
