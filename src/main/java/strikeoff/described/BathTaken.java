package strikeoff.described;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * A step that fixes or finishes the cloth.
 *
 * @param kind soak, batch, steam, rinse, wash or heat-set
 */
public record BathTaken(int step, String kind, Temperature temperature, Span lasts, PlanPath path)
    implements Evidence {}
