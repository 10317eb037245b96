package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;
import strikeoff.plan.Step;
import strikeoff.units.Area;

/**
 * Dye that a print step lays over a paint film, set or not: the binder keeps it from the fibre.
 *
 * @param step the step that prints the dye
 * @param dyes names of its pastes that are concerned
 * @param paints names of the paints under them
 * @param copies the placements concerned
 * @param most area that they can share
 * @param certain true if they surely share some, false if they may miss each other inside their
 *     image rectangles
 */
public record DyeOverPaint(
    Step step,
    List<String> dyes,
    List<String> paints,
    Copies copies,
    Area most,
    boolean certain,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  public DyeOverPaint {
    dyes = List.copyOf(dyes);
    paints = List.copyOf(paints);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  /** Whether all of these paints are among those that lie under it. */
  public boolean covers(List<String> names) {
    return paints.containsAll(names);
  }
}
