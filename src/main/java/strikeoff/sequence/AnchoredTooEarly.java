package strikeoff.sequence;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * Placements that are printed before there is any print of what they are set from.
 *
 * @param arrangement whose placements they are
 * @param places those of its placements, in short: {@code shells 1–6}
 * @param anchor the arrangement they are set from
 * @param step the step that prints them
 * @param anchorStep the step that prints the first of their anchors
 */
public record AnchoredTooEarly(
    String arrangement,
    String places,
    String anchor,
    String step,
    String anchorStep,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public AnchoredTooEarly {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
