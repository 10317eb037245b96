package strikeoff.plan;

import java.util.Optional;
import strikeoff.units.Measures;

/**
 * A wait in which films dry.
 *
 * @param until how long
 * @param air what moves the air over the cloth meanwhile; empty for the room's own air
 */
public record Wait(Until until, Optional<Draught> air) {

  /** No wait at all. */
  public static final Wait NONE = new Wait(Until.NO_WAIT, Optional.empty());

  /** True for no time in the room's own air, however it was written. */
  public boolean isNone() {
    return air.isEmpty() && until instanceof Until.Time time && time.span().minutes() == 0;
  }

  /** In the room's own air. */
  public static Wait of(Until until) {
    return new Wait(until, Optional.empty());
  }

  /** As one writes it after a key; a plain value if the room's own air does. */
  public String text(Measures units) {
    return air.map(draught -> "{" + key() + ", air: " + draught.text(units) + "}")
        .orElseGet(until::text);
  }

  private String key() {
    return until instanceof Until.State state
        ? "until: " + state.dryness().text()
        : "for: " + until.text();
  }
}
