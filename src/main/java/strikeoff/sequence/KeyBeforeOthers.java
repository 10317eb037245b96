package strikeoff.sequence;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;
import strikeoff.units.Length;

/**
 * An outline or key colour that is printed before another colour of its motif which it overlaps.
 *
 * @param key its paste
 * @param after pastes printed after it
 * @param opaque those of them that are opaque, and hide what they lie over
 * @param overlap how far they are cut to lie over it, where the plan says so
 * @param finest its finest line, where the plan says so
 * @param better pastes of the design in an order that ends with the key
 * @param copies the placements concerned
 * @param path of what sets the order: the design's list, or the print step that leaves it
 */
public record KeyBeforeOthers(
    String design,
    String key,
    List<String> after,
    List<String> opaque,
    Optional<Length> overlap,
    Optional<Length> finest,
    List<String> better,
    Copies copies,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  public KeyBeforeOthers {
    after = List.copyOf(after);
    opaque = List.copyOf(opaque);
    better = List.copyOf(better);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  /**
   * True if an opaque colour is cut to lie over it as far as its finest line is wide, or farther.
   */
  public boolean hidden() {
    return !opaque.isEmpty()
        && overlap.isPresent()
        && finest.isPresent()
        && overlap.get().compareTo(finest.get()) >= 0;
  }
}
