package strikeoff.bath;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * Paint that was printed, and what follows it.
 *
 * @param paints the paints
 * @param impressions how many prints of them
 * @param heats how many heat-sets follow
 * @param baths how many soaks, rinses and washes follow: in the first it is lost before any heat
 * @param mending what sets them on this cloth, as an instruction without a full stop
 * @param marks placements concerned
 * @param path of the last print step with such paint
 */
public record PaintPrinted(
    List<String> paints,
    int impressions,
    int heats,
    int baths,
    String mending,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public PaintPrinted {
    paints = List.copyOf(paints);
    marks = List.copyOf(marks);
  }
}
