package strikeoff.sequence;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Area;

/**
 * Paint that a print step lays over dye which nothing has fixed yet.
 *
 * @param step the step that prints the paint
 * @param paints names of its pastes that are concerned
 * @param dyes names of the pastes under them
 * @param places the placements concerned, in short: {@code herons 1–6}
 * @param most area that they can share
 * @param certain true if they surely share some, false if they may miss each other inside their
 *     image rectangles
 * @param fix the step that fixes the dye afterwards; {@code no step} if none does
 */
public record PaintOverDye(
    String step,
    List<String> paints,
    List<String> dyes,
    String places,
    Area most,
    boolean certain,
    String fix,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public PaintOverDye {
    paints = List.copyOf(paints);
    dyes = List.copyOf(dyes);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
