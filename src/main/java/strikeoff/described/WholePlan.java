package strikeoff.described;

import strikeoff.day.Moment;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Span;

/**
 * The plan as a whole; there is always one.
 *
 * @param lays frames laid in all
 * @param notes true if the plan holds notes
 */
public record WholePlan(
    String title,
    int screens,
    int pastes,
    int designs,
    int placements,
    int days,
    int lays,
    Moment finish,
    Span work,
    Span waiting,
    boolean notes,
    PlanPath path)
    implements Evidence {}
