package strikeoff.described;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * An arrangement as it lies on the cloth.
 *
 * @param kind series, border, fill, anchored or placed
 * @param placements how many there are
 */
public record ArrangementPlaced(
    String arrangement,
    String kind,
    String design,
    int placements,
    int colours,
    boolean turned,
    boolean mirrored,
    PlanPath path)
    implements Evidence {}
