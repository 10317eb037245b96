package strikeoff.sequence;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;

/**
 * A seam that is not sewn before the print day, and what the run prints across it.
 *
 * @param sewings how many steps sew it
 * @param filmsBefore true if something is printed before, which is to be dry when it is sewn
 * @param padded true if its ridge is levelled
 * @param first number of the first step that prints across it; 0 if none does
 * @param copies what is printed across it
 */
public record OpenSeam(
    String seam,
    int sewings,
    boolean filmsBefore,
    boolean padded,
    int first,
    Copies copies,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  public OpenSeam {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  /** True if something is printed across it. */
  public boolean printedAcross() {
    return first > 0;
  }

  /** The first step that prints across it, if the cloth can be sewn before it as it is. */
  public Optional<Integer> firstAtOnce() {
    return filmsBefore ? Optional.empty() : Optional.of(first);
  }

  /** The same, if what is printed before has to dry first. */
  public Optional<Integer> firstOnceDry() {
    return filmsBefore ? Optional.of(first) : Optional.empty();
  }

  /** Where its padding is to be written, if it has none. */
  public Optional<PlanPath> padding() {
    return padded ? Optional.empty() : Optional.of(path.key("padded"));
  }
}
