package strikeoff.sequence;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * An outline or key colour that is printed before another colour of its motif which it overlaps.
 *
 * @param key its paste
 * @param after pastes printed after it
 * @param better pastes of the design in an order that ends with the key
 * @param places the placements concerned, in short: {@code herons 1–6}
 * @param path of what sets the order: the design's list, or the print step that leaves it
 */
public record KeyNotLast(
    String design,
    String key,
    List<String> after,
    List<String> better,
    String places,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public KeyNotLast {
    after = List.copyOf(after);
    better = List.copyOf(better);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  /** As {@code sand, then ink}. */
  public String betterOrder() {
    return String.join(", then ", better);
  }
}
