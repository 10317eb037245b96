package strikeoff.bath;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/** The time of a soak or a batch that dye reacts in, the last one before the cloth is rinsed. */
public record FixTime(Warmth warmth, PlanPath path) implements Evidence {}
