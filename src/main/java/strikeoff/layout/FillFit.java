package strikeoff.layout;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.units.Length;
import strikeoff.units.Measures;

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

  /** The pitch at which the rectangle holds as many as expected, to be written. */
  public Optional<String> closerPitch(Measures units) {
    return closer.map(p -> p.written(units));
  }

  /** What room there is for as many as expected, as a sentence. */
  public String enoughText(Measures units) {
    return enoughWith.mm() < 0
        ? "The others would lie on " + String.join(" or ", around) + "."
        : "For "
            + expected
            + ", come closer: write `clear: "
            + enoughWith.roundedDown(units)
            + "`.";
  }

  /** What makes room where nothing fits, as an instruction without a full stop. */
  public String roomText(Measures units) {
    return candidates == 0
        ? "Enlarge the rectangle until it holds one repeat"
        : "Enlarge the rectangle, or keep less than " + clear.text(units) + " clear";
  }

  /** What to count on, as an instruction without a full stop. */
  public String countingText(Measures units) {
    String fewer = fitted == 0 ? "Leave " + arrangement + " out" : "Write `count: " + fitted + "`";
    return fewer
        + closerPitch(units)
            .map(
                pitch ->
                    ", or write `pitch: " + pitch + "`, with which its rectangle holds " + expected)
            .orElse(", or enlarge its rectangle");
  }

  /** Why nothing fits, in words; of no meaning if something does. */
  public String noRoomText(Measures units) {
    return candidates == 0
        ? "its rectangle is too small for one repeat"
        : "every one of the "
            + candidates
            + " repeats of its rectangle comes closer than "
            + clear.text(units)
            + " to "
            + String.join(" or ", around);
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
