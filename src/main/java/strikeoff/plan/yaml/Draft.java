package strikeoff.plan.yaml;

import strikeoff.artwork.Artworks;
import strikeoff.document.Bounds;
import strikeoff.policy.Policy;
import strikeoff.yaml.Reading;

/**
 * What the decoders of one plan share.
 *
 * @param artworks where its films lie
 * @param names what the plan defines, faulty or not, so that one mistake isn't told twice
 */
record Draft(
    Policy policy,
    Bounds bounds,
    Artworks artworks,
    Reading reading,
    Assumptions assumptions,
    Names names) {}
