package strikeoff.findings;

import java.util.Optional;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * An acceptance that no finding answers to.
 *
 * @param rule the rule whose findings it would accept
 * @param at the place it is bound to, if any
 */
public record IdleAcceptance(String rule, Optional<String> at, PlanPath path) implements Evidence {

  /** Where it looks for a finding. */
  public String where() {
    return at.map(place -> "at " + new PlanPath(place).spoken()).orElse("anywhere in the plan");
  }
}
