package strikeoff.sequence;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Step;

/**
 * Prints of one arrangement that a step makes on bare places, or those it makes again of another
 * step.
 *
 * @param parts what is printed again, by its colours
 * @param step the step
 * @param before the step that printed them first; empty if none did
 * @param prints how many
 * @param again how many of them are on the cloth already: all or none
 */
public record PrintsOfStep(
    String arrangement,
    List<PrintsOfArrangement.Part> parts,
    Step step,
    Optional<Step> before,
    int prints,
    int again,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public PrintsOfStep {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
