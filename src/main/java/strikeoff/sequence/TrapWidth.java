package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Length;

/**
 * The narrowest trap that a design's plan states.
 *
 * @param pastes of the separations that have it
 * @param trap how far it overlaps the colours it adjoins
 * @param railed true if frames go against a rail and stops, false if they are laid by eye
 * @param tolerance how far a frame can be off on this table
 */
public record TrapWidth(
    String design,
    List<String> pastes,
    Length trap,
    boolean railed,
    Length tolerance,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public TrapWidth {
    pastes = List.copyOf(pastes);
    marks = List.copyOf(marks);
  }

  /** What is missing to the tolerance; negative if the trap is wider. */
  public Length widen() {
    return tolerance.minus(trap);
  }
}
