package strikeoff.sequence;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;
import strikeoff.plan.Step;

/**
 * The first soak, rinse or wash that reaches paint.
 *
 * @param step that step
 * @param heats how many heat-sets come between the print and it
 * @param paints their names
 * @param copies the placements that hold them
 * @param heatSet the step that sets them afterwards; empty if none does
 * @param looseDye the step that printed dye before the paint which nothing has washed off by then;
 *     heat before that is done would bake the dye where the paint locks it in
 * @param lastWater the last step of those that keep the cloth wet
 * @param edits what brings, where none comes between, the heat-set before the bath, or the baths
 *     before the paint
 */
public record PaintInBath(
    Step step,
    int heats,
    List<String> paints,
    Copies copies,
    Optional<Step> heatSet,
    Optional<Step> looseDye,
    Step lastWater,
    List<List<Edit>> edits,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  public PaintInBath {
    paints = List.copyOf(paints);
    edits = List.copyOf(edits);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
