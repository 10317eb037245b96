package strikeoff.plan.yaml;

import strikeoff.document.Bounds;
import strikeoff.policy.Policy;
import strikeoff.yaml.Reading;

/**
 * What the decoders of one plan share.
 *
 * @param names what the plan defines, faulty or not, so that one mistake isn't told twice
 */
record Draft(Policy policy, Bounds bounds, Reading reading, Assumptions assumptions, Names names) {}
