package strikeoff.described;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.AirSpeed;

/**
 * Air that is moved over the cloth in a wait.
 *
 * @param step number of the step that waits
 * @param by still, fan, hair-dryer or a stated speed
 * @param speed over the cloth
 */
public record AirMoved(int step, String by, AirSpeed speed, PlanPath path) implements Evidence {}
