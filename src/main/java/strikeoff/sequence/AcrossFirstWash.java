package strikeoff.sequence;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.layout.Copies;
import strikeoff.plan.Step;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * Motifs on cloth that was not washed, with colours on both sides of its first wash. What is on the
 * cloth by then shrinks with it; stencils don't.
 *
 * @param earlier pastes printed before that wash
 * @param later pastes printed after it, in its place on those
 * @param earlierStep the step that prints the first of them
 * @param step the first step that prints the later ones
 * @param wash the first wash
 * @param begins the first step of the run
 * @param shrinkLength what the wash takes of the cloth's length
 * @param shrinkWidth what it takes of its width
 * @param along how long, along the cloth, the part is in which an earlier and a later colour can
 *     meet, where that shrinks most
 * @param across how wide it is
 * @param trap how far the two overlap; empty if neither the plan nor their films tell
 * @param railed true if frames go against a rail and stops, false if they are laid by eye
 * @param tolerance how far a frame can be off on this table
 */
public record AcrossFirstWash(
    String arrangement,
    List<String> earlier,
    List<String> later,
    Step earlierStep,
    Step step,
    Step.Wash wash,
    Step begins,
    Share shrinkLength,
    Share shrinkWidth,
    Length along,
    Length across,
    Optional<Length> trap,
    boolean railed,
    Length tolerance,
    Copies copies,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements AtCopies {

  public AcrossFirstWash {
    earlier = List.copyOf(earlier);
    later = List.copyOf(later);
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  /** How long that part is after the wash. */
  public Length keptAlong() {
    return along.times(1 - shrinkLength.fraction());
  }

  /** How wide it is after the wash. */
  public Length keptAcross() {
    return across.times(1 - shrinkWidth.fraction());
  }

  /** How far the later colour is off at one edge if it fits at the other, the worse way. */
  public Length farEdge() {
    return longer(along.minus(keptAlong()), across.minus(keptAcross()));
  }

  /** How far it is off at both edges if it fits in the middle. */
  public Length eitherEdge() {
    return farEdge().times(0.5);
  }

  /** How far two colours can be off and still meet: the trap, or less than a frame can be laid. */
  public Length takes() {
    return longer(trap.orElse(tolerance), tolerance);
  }

  private static Length longer(Length one, Length other) {
    return one.compareTo(other) > 0 ? one : other;
  }
}
