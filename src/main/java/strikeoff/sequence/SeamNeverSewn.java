package strikeoff.sequence;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * A seam that no step sews and that was not sewn before, though placements lie across it.
 *
 * @param places those of them that are printed, in short: {@code herons 1–6}
 */
public record SeamNeverSewn(
    String seam, String places, List<String> marks, List<Related> related, PlanPath path)
    implements Evidence {

  public SeamNeverSewn {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
