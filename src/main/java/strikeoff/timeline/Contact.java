package strikeoff.timeline;

import strikeoff.units.Area;
import strikeoff.units.Span;

/**
 * A frame laid on a film before it was frame-safe, or before it was surely so.
 *
 * @param area of the film under the frame
 * @param shortLeast how much too early even by the fastest credible drying; zero or negative if
 *     that would do
 * @param shortBest how much too early by the most likely drying time; zero or negative if only the
 *     range is crossed
 * @param shortMost how much too early by the slowest credible drying; always above zero
 */
public record Contact(
    Impression earlier,
    Impression later,
    Area area,
    Span shortLeast,
    Span shortBest,
    Span shortMost) {

  /** True if the whole range of drying is too long, false if a part of it would do. */
  public boolean certain() {
    return shortLeast.seconds() > 0;
  }

  /** True if the most likely drying time is too long. */
  public boolean likely() {
    return shortBest.seconds() > 0;
  }

  /** True if both are colours of one motif, false for a neighbour under the frame's overhang. */
  public boolean sameMotif() {
    return earlier.footprint().placement().id() == later.footprint().placement().id();
  }
}
