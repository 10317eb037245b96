package strikeoff.plan;

import java.util.Optional;
import strikeoff.document.PlanPath;

/**
 * A finding that the printer accepts, and why.
 *
 * @param rule id of the rule
 * @param at only findings at or under this place of the plan, as a path's text; empty for all
 *     findings of the rule
 */
public record Acceptance(String rule, Optional<String> at, String because, PlanPath path) {}
