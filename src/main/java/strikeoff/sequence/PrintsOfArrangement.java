package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * What the run prints of one arrangement, and which placements or colours of it it leaves out.
 *
 * @param what is left out, in words: {@code 5, 6 in all colours}, {@code (all 6) in ink}
 * @param missing how many prints are missing
 * @param all how many prints the arrangement has
 * @param path of the last step that prints some of it, else of the arrangement
 */
public record PrintsOfArrangement(
    String arrangement,
    String what,
    int missing,
    int all,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public PrintsOfArrangement {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
