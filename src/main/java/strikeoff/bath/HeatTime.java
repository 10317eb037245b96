package strikeoff.bath;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Span;

/**
 * The time of a heat-set at each spot.
 *
 * @param needed the shortest time that sets all paints at this temperature
 * @param asks the paint that asks for it
 * @param basis on what that rests, in words
 * @param lacks what is missing to {@code needed}; zero if it is long enough
 * @param more the same in whole minutes
 */
public record HeatTime(
    HeatSetting heat, Span needed, String asks, String basis, Span lacks, Span more, PlanPath path)
    implements Evidence {}
