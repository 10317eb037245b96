package strikeoff.described;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

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
