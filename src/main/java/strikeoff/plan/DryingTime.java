package strikeoff.plan;

import java.util.Optional;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * A drying time that the printer took on a strike-off, with the air in which it was taken.
 *
 * @param after from the lifted frame to the state
 * @param air what moved the air; empty for what moves the room's
 * @param temperature of the air; empty for the room's
 * @param humidity of the air; empty for the room's
 */
public record DryingTime(
    Span after,
    Optional<Draught> air,
    Optional<Temperature> temperature,
    Optional<Share> humidity) {

  /** Taken in the room's own air. */
  public static DryingTime inTheRoom(Span after) {
    return new DryingTime(after, Optional.empty(), Optional.empty(), Optional.empty());
  }
}
