package strikeoff.sequence;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;
import strikeoff.plan.Step;
import strikeoff.units.Area;

/**
 * Paint that a print step lays over dye which nothing has fixed yet.
 *
 * @param step the step that prints the paint
 * @param paints names of its pastes that are concerned
 * @param dyes names of the pastes under them
 * @param copies the placements concerned
 * @param most area that they can share
 * @param certain true if they surely share some, false if they may miss each other inside their
 *     image rectangles
 * @param dyeStep the last step that prints such dye
 * @param fix the step that fixes the dye afterwards; empty if none does
 * @param edits what brings fixing, washing off and drying before the paint
 */
public record PaintOverDye(
    Step step,
    List<String> paints,
    List<String> dyes,
    Copies copies,
    Area most,
    boolean certain,
    Step dyeStep,
    Optional<Step> fix,
    List<List<Edit>> edits,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  public PaintOverDye {
    paints = List.copyOf(paints);
    dyes = List.copyOf(dyes);
    edits = List.copyOf(edits);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  /** Whether all of these paints are among those that are laid over it. */
  public boolean covers(List<String> names) {
    return paints.containsAll(names);
  }

  /** True if it is that step which fixes the dye afterwards. */
  public boolean fixedIn(Step step) {
    return fix.filter(f -> f.number() == step.number()).isPresent();
  }
}
