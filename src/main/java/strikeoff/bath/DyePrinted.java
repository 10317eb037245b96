package strikeoff.bath;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * Dye that was printed, and what follows it.
 *
 * @param dyes the pastes
 * @param impressions how many prints of them
 * @param fixes how many soaks, batches and steamings follow
 * @param mending what would fix them on this cloth, as an instruction without a full stop
 * @param water the rinse or the wash that follows, as the end of a sentence; empty if there is none
 * @param heat the dry heat that follows, and what it would ask for, as a sentence after a blank;
 *     empty if there is none
 * @param marks placements concerned
 * @param path of the last print step with such dye
 */
public record DyePrinted(
    List<String> dyes,
    int impressions,
    int fixes,
    String mending,
    String water,
    String heat,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public DyePrinted {
    dyes = List.copyOf(dyes);
    marks = List.copyOf(marks);
  }
}
