package strikeoff.day;

import java.util.Optional;
import strikeoff.units.Area;
import strikeoff.units.Chance;
import strikeoff.units.Span;

/**
 * A frame laid on a film before it was frame-safe, or before it was surely so.
 *
 * @param area of the earlier print's image under the frame
 * @param printed how much of that takes paste, by its film; empty if it has none
 * @param safe when the film would be frame-safe if the work stood still where a longer wait would
 *     clear it, in the air of that wait; not when it is safe in the run, where a later fan may help
 */
public record Contact(
    Impression earlier, Impression later, Area area, Optional<Area> printed, Reached safe) {

  /** How much too early even in quick drying; not above zero if that would do. */
  public Span shortLeast() {
    return safe.earliest().since(later.laid());
  }

  /** How much too early on an ordinary day; not above zero if most days would do. */
  public Span shortBest() {
    return safe.best().since(later.laid());
  }

  /** How much too early in slow drying; always above zero. */
  public Span shortMost() {
    return safe.latest().since(later.laid());
  }

  /** On how many days the film is still wet when the frame comes down. */
  public Chance chance() {
    return safe.chanceAfter(later.laid());
  }

  /** True if it is more likely wet than not. */
  public boolean likely() {
    return shortBest().seconds() > 0;
  }

  /** True if both are colours of one motif, false for a neighbour under the frame's overhang. */
  public boolean sameMotif() {
    return earlier.footprint().placement().id() == later.footprint().placement().id();
  }
}
