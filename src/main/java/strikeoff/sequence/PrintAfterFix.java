package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;

/**
 * A print step on a cloth whose earlier dye is fixed.
 *
 * @param step that step
 * @param fix the last fixing before it
 * @param fixStep its number
 * @param rinsed true if a rinse or a wash came between
 * @param washed true if a wash came between
 * @param copies what the step prints
 */
public record PrintAfterFix(
    Step step,
    Medium medium,
    Step fix,
    int fixStep,
    boolean rinsed,
    boolean washed,
    Copies copies,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  public PrintAfterFix {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  public boolean isPaint() {
    return medium == Medium.PAINT;
  }
}
