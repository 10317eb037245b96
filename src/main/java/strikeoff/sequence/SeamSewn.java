package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Step;

/**
 * A sewn seam, and the work away from it that comes afterwards on cloth which no longer lies flat.
 *
 * @param step the step that sews it
 * @param awayAfter prints away from the seam that come after it
 * @param awayBefore prints away from it that come before it
 * @param acrossAfter prints across it that come after it
 * @param lastAway the last step that prints away from it; the same as {@code step} if none does
 */
public record SeamSewn(
    String seam,
    Step step,
    int awayAfter,
    int awayBefore,
    int acrossAfter,
    Step lastAway,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public SeamSewn {
    related = List.copyOf(related);
  }

  public int away() {
    return awayBefore + awayAfter;
  }
}
