package strikeoff.bath;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/** The temperature of a soak or a batch that dye reacts in. */
public record FixTemperature(Warmth warmth, PlanPath path) implements Evidence {}
