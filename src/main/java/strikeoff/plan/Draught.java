package strikeoff.plan;

import strikeoff.units.AirSpeed;
import strikeoff.units.Measures;

/**
 * Air moved over the cloth while it dries.
 *
 * @param by what moves it
 * @param speed over the cloth
 */
public record Draught(By by, AirSpeed speed) {

  /** Air that stands. */
  public static final Draught STILL = new Draught(By.STILL, new AirSpeed(0));

  /** As one writes it into a plan. */
  public String text(Measures units) {
    return by == By.STATED ? speed.text(units) : by.text();
  }

  /** What moves the air. */
  public enum By {
    /** Nothing: the air stands, whatever the room's does. */
    STILL("still"),
    FAN("fan"),
    /** Somebody holds it. */
    HAIR_DRYER("hair-dryer"),
    /** A speed that the plan states, whatever makes it. */
    STATED("a stated speed");

    private final String text;

    By(String text) {
      this.text = text;
    }

    public String text() {
      return text;
    }
  }
}
