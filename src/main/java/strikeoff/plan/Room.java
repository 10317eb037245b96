package strikeoff.plan;

import strikeoff.document.PlanPath;
import strikeoff.units.Share;
import strikeoff.units.Temperature;

/**
 * The air in the print room.
 *
 * @param humidity relative humidity
 * @param air over the cloth, all day
 */
public record Room(Temperature temperature, Share humidity, Draught air, PlanPath path) {

  /**
   * In °C. What is known of moist air and drying films ends here, with supercooled water, and at
   * {@link #HOTTEST}, where water boils.
   */
  public static final double COLDEST = -40;

  public static final double HOTTEST = 100;
}
