package strikeoff.described;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Share;
import strikeoff.units.Span;

/**
 * Somebody or something that the run keeps busy.
 *
 * @param kind person, cloth, station, sink, fan, hair-dryer, drying place or screen
 * @param name which one
 * @param share of the time from the start of each day at the table to its end
 */
public record InUse(String kind, String name, Span busy, Share share, PlanPath path)
    implements Evidence {}
