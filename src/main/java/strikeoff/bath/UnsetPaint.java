package strikeoff.bath;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * Paint that neither a heat-set nor a bath follows: in a bath it is lost before any heat.
 *
 * @param paints the paints
 * @param impressions how many prints of them
 * @param mending what sets them on this cloth, as an instruction without a full stop
 * @param marks placements concerned
 * @param path of the last print step with such paint
 */
public record UnsetPaint(
    List<String> paints, int impressions, String mending, List<String> marks, PlanPath path)
    implements Evidence {

  public UnsetPaint {
    paints = List.copyOf(paints);
    marks = List.copyOf(marks);
  }
}
