package strikeoff.layout;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * An arrangement of so many copies that they are not laid at all.
 *
 * @param copies how many it would have; may be beyond any whole number
 * @param mostImpressions how many impressions of all arrangements together are laid
 */
public record BeyondCounting(String arrangement, double copies, int mostImpressions, PlanPath path)
    implements Evidence {}
