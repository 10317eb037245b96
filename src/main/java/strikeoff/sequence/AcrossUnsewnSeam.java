package strikeoff.sequence;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * Placements across a seam that a step prints before the seam is sewn.
 *
 * @param arrangement whose placements they are
 * @param numbers of those across it, in short
 * @param step the step that prints them too early
 * @param sewing the step that sews the seam
 * @param others numbers that the step can go on to print, in short; {@code none} if all cross it
 */
public record AcrossUnsewnSeam(
    String seam,
    String arrangement,
    String numbers,
    String step,
    String sewing,
    String others,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public AcrossUnsewnSeam {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
