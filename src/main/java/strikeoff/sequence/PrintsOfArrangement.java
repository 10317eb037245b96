package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * What the run prints of one arrangement, and which placements or colours of it it leaves out.
 *
 * @param parts what is left out, by its colours
 * @param missing how many prints are missing
 * @param all how many prints the arrangement has
 * @param path of the last step that prints some of it, else of the arrangement
 */
public record PrintsOfArrangement(
    String arrangement,
    List<Part> parts,
    int missing,
    int all,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  /**
   * Placements that are alike in their colours.
   *
   * @param numbers theirs, in their order
   * @param all true if these are all that the arrangement has
   * @param only true if it has but one
   * @param colours the pastes concerned; empty if all are
   */
  public record Part(List<Integer> numbers, boolean all, boolean only, List<String> colours) {}

  public PrintsOfArrangement {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
