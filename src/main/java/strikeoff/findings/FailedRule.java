package strikeoff.findings;

/**
 * A rule that failed while it judged: a fault of the tool, never of the plan.
 *
 * @param rule its id
 * @param what what went wrong, in one line
 */
public record FailedRule(String rule, String what) {}
