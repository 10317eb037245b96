package strikeoff.sequence;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;
import strikeoff.plan.Step;

/**
 * Placements that a step prints first, and when there is a print of what they are set from, or of
 * what they are to lie over.
 *
 * @param anchored true if they are set from it, false if the plan says that they go over it
 * @param arrangement whose placements they are
 * @param early how many of them are printed before there is any
 * @param copies those of its placements; all of them if none is early
 * @param base the arrangement they are set from, or go over
 * @param step the step that prints them
 * @param number its number
 * @param baseStep the step that prints the first of their bases
 * @param baseNumber its number
 * @param inOrder what that step prints, in an order with the base first, if both are printed in one
 *     step and that is what is wrong; empty otherwise
 */
public record BaseOrder(
    boolean anchored,
    String arrangement,
    int early,
    Copies copies,
    String base,
    Step step,
    int number,
    Step baseStep,
    int baseNumber,
    List<String> inOrder,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  public BaseOrder {
    inOrder = List.copyOf(inOrder);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  /** What that step prints in the right order, to be written there. */
  public Optional<List<String>> reordered() {
    return Optional.of(inOrder).filter(order -> !order.isEmpty());
  }

  /** Number of the step that is to come before, if the two are not one. */
  public Optional<Integer> toComeFirst() {
    return number == baseNumber ? Optional.empty() : Optional.of(baseNumber);
  }

  /** Whether all of these placements, by their names, are printed too early. */
  public boolean holds(List<String> placements) {
    return marks.containsAll(placements);
  }
}
