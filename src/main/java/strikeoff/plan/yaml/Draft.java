package strikeoff.plan.yaml;

import java.util.Map;
import strikeoff.artwork.Artworks;
import strikeoff.document.Bounds;
import strikeoff.document.PlanPath;
import strikeoff.policy.Policy;
import strikeoff.yaml.Reading;

/**
 * What the decoders of one plan share.
 *
 * @param artworks where its films lie
 * @param films those that separations take from the studio, by the separation
 * @param names what the plan defines, faulty or not, so that one mistake isn't told twice
 */
record Draft(
    Policy policy,
    Bounds bounds,
    Artworks artworks,
    Map<PlanPath, Stock.Film> films,
    Reading reading,
    Assumptions assumptions,
    Names names) {}
