package strikeoff.bath;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Span;

/**
 * The time of a heat-set.
 *
 * @param more what is missing to the shortest time allowed, in whole minutes
 */
public record HeatTime(HeatSetting heat, Span more, PlanPath path) implements Evidence {}
