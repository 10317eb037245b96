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
public record Room(Temperature temperature, Share humidity, Draught air, PlanPath path) {}
