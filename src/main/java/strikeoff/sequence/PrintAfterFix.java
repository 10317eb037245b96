package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Medium;

/**
 * A print step on a cloth whose earlier dye is fixed.
 *
 * @param step that step
 * @param fix the last fixing before it
 * @param fixStep its number
 * @param rinsed true if a rinse or a wash came between
 * @param washed true if a wash came between
 * @param places what the step prints, in short: {@code herons 1–6}
 */
public record PrintAfterFix(
    String step,
    Medium medium,
    String fix,
    int fixStep,
    boolean rinsed,
    boolean washed,
    String places,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public PrintAfterFix {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  public boolean isPaint() {
    return medium == Medium.PAINT;
  }
}
