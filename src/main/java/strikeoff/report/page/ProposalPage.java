package strikeoff.report.page;

import gg.jte.Content;
import java.util.List;

/**
 * A run that is proposed, beside the plan's own.
 *
 * @param sentence what it comes to
 * @param today chart of the plan's own run; null if it prints nothing
 * @param proposed chart of the proposed one
 * @param moved what it does otherwise, in sentences
 * @param proof how far it is from the best
 * @param known what to know of it, in sentences
 * @param run its lines in the plan
 */
public record ProposalPage(
    Head head,
    String title,
    String file,
    String sentence,
    List<Figure> figures,
    Content today,
    Content proposed,
    List<String> moved,
    String proof,
    List<String> known,
    String run) {

  public ProposalPage {
    figures = List.copyOf(figures);
    moved = List.copyOf(moved);
    known = List.copyOf(known);
  }
}
