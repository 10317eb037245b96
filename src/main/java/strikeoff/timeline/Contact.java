package strikeoff.timeline;

import strikeoff.units.Area;
import strikeoff.units.Span;

/**
 * A frame laid on a film before it was frame-safe, or before it was surely so.
 *
 * @param area of the film under the frame
 * @param safe when the film would be frame-safe if the work stood still where a longer wait would
 *     clear it, in the air of that wait; not when it is safe in the run, where a later fan may help
 */
public record Contact(Impression earlier, Impression later, Area area, Reached safe) {

  /** How much too early even by the fastest credible drying; not above zero if that would do. */
  public Span shortLeast() {
    return safe.earliest().since(later.laid());
  }

  /** How much too early by the most likely drying; not above zero if only the range is crossed. */
  public Span shortBest() {
    return safe.best().since(later.laid());
  }

  /** How much too early by the slowest credible drying; always above zero. */
  public Span shortMost() {
    return safe.latest().since(later.laid());
  }

  /** True if the whole range of drying is too long, false if a part of it would do. */
  public boolean certain() {
    return shortLeast().seconds() > 0;
  }

  /** True if the most likely drying time is too long. */
  public boolean likely() {
    return shortBest().seconds() > 0;
  }

  /** True if both are colours of one motif, false for a neighbour under the frame's overhang. */
  public boolean sameMotif() {
    return earlier.footprint().placement().id() == later.footprint().placement().id();
  }
}
