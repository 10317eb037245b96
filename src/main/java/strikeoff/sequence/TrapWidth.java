package strikeoff.sequence;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.FilmPlace;
import strikeoff.plan.Artwork.Finest;
import strikeoff.units.Length;

/**
 * The narrowest trap of a design, by its films, or else by what the plan states.
 *
 * @param pastes of the separations that have it
 * @param trap how far it overlaps the colours it adjoins
 * @param lap the same as it was measured on films; empty if the plan states it
 * @param doubt how much wider or narrower it may be: a point of the films that it was measured on;
 *     nothing if the plan states it
 * @param railed true if frames go against a rail and stops, false if they are laid by eye
 * @param tolerance how far a frame can be off on this table
 */
public record TrapWidth(
    String design,
    List<String> pastes,
    Length trap,
    Optional<Finest> lap,
    Length doubt,
    boolean railed,
    Length tolerance,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public TrapWidth {
    pastes = List.copyOf(pastes);
    marks = List.copyOf(marks);
  }

  @Override
  public Map<String, FilmPlace> onFilms() {
    return lap.map(l -> Map.of("trap", l.place())).orElse(Map.of());
  }

  /** True if it is narrower than the tolerance, whatever the doubt. */
  public boolean narrow() {
    return trap.plus(doubt).finerThan(tolerance.mm());
  }

  /** What is missing to the tolerance; negative if the trap is wider. */
  public Length widen() {
    return tolerance.minus(trap);
  }
}
