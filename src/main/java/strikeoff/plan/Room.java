package strikeoff.plan;

import strikeoff.units.AirSpeed;
import strikeoff.units.Share;
import strikeoff.units.Temperature;

/**
 * The air in the print room.
 *
 * @param humidity relative humidity
 * @param air speed over the cloth; 0 for still air
 */
public record Room(Temperature temperature, Share humidity, AirSpeed air, PlanPath path) {}
