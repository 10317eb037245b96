package strikeoff.layout;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.units.Length;

/**
 * How many repeats of a fill find room.
 *
 * @param candidates repeats that the rectangle holds
 * @param fitted those that keep clear of the arrangements around; only these are laid
 * @param dropped those left out since they come too close
 * @param counted true if the plan says how many it expects
 * @param expected how many it expects; as many as fitted if it doesn't say
 * @param missing how many of the expected find no room
 * @param clear margin that the plan keeps
 * @param enoughWith the widest margin that leaves room for as many as expected; the plan's own if
 *     none is missing, below zero if only overlaps would do
 * @param closer the widest pitch, in the same proportions, of which the rectangle holds as many as
 *     expected; the plan's own if it holds them, empty if repeats so close would overlap
 */
public record FillFit(
    String arrangement,
    int candidates,
    int fitted,
    int dropped,
    boolean counted,
    int expected,
    int missing,
    Length clear,
    Length enoughWith,
    List<String> around,
    Optional<Pitch> closer,
    PlanPath path)
    implements Evidence {

  public FillFit {
    around = List.copyOf(around);
  }

  /**
   * @param distances of the dropped repeats from their nearest neighbour, mm; below zero if they
   *     overlap it
   */
  static FillFit of(
      Arrangement.Fill fill, FillLattice lattice, int fitted, List<Double> distances) {
    int expected = fill.count().orElse(fitted);
    int missing = Math.max(0, expected - fitted);
    double enough = fill.clear().mm();
    if (missing > distances.size()) {
      enough = -1;
    } else if (missing > 0) {
      enough = distances.stream().sorted(Comparator.reverseOrder()).toList().get(missing - 1);
    }
    return new FillFit(
        fill.name(),
        fitted + distances.size(),
        fitted,
        distances.size(),
        fill.count().isPresent(),
        expected,
        missing,
        fill.clear(),
        new Length(enough),
        fill.around(),
        lattice.pitchFor(expected),
        fill.count().isPresent() ? fill.path().key("count") : fill.path());
  }

  /** How many fit beyond what the plan expects. */
  public int more() {
    return Math.max(0, fitted - expected);
  }

  /** How many the rectangle lacks even if nothing had to keep clear. */
  public int beyondRectangle() {
    return Math.max(0, expected - candidates);
  }
}
