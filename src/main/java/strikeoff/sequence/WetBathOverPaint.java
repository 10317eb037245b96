package strikeoff.sequence;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * The first soak, rinse or wash that reaches paint which no heat has set.
 *
 * @param step that step
 * @param paints names of the unset paints
 * @param places the placements that hold them, in short: {@code herons 1–6}
 * @param heatSet the step that sets them afterwards; {@code no step} if none does
 */
public record WetBathOverPaint(
    String step,
    List<String> paints,
    String places,
    String heatSet,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public WetBathOverPaint {
    paints = List.copyOf(paints);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
