package strikeoff.findings;

import java.util.Optional;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * An acceptance that the studio's policy doesn't allow, so that it counts for nothing.
 *
 * @param rule the rule whose findings it would accept
 * @param at the place it is bound to, if any
 * @param policy the file and line that says so
 */
public record BarredAcceptance(String rule, Optional<String> at, String policy, PlanPath path)
    implements Evidence {}
