package strikeoff.sequence;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * Prints of a step that are on the cloth already.
 *
 * @param what is printed again, in words: {@code 3 in all colours}, {@code 1, 2 in ink}
 * @param step the step that prints them again
 * @param before the step that printed them first
 * @param again how many prints
 */
public record PrintedTwice(
    String arrangement,
    String what,
    String step,
    String before,
    int again,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public PrintedTwice {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }
}
