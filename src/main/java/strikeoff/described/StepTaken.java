package strikeoff.described;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * A step of the run.
 *
 * @param step its number, from 1
 * @param kind mix, print, dry, move, sew, soak, batch, steam, rinse, wash, heat-set or end of day
 */
public record StepTaken(int step, String kind, String title, PlanPath path) implements Evidence {}
