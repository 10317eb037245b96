package strikeoff.plan;

import strikeoff.document.PlanPath;

/**
 * A value that the plan left open.
 *
 * @param path where it would stand
 * @param name what it is, in the trade's words
 * @param value what was taken
 * @param source where that default comes from
 */
public record Assumption(PlanPath path, String name, String value, String source) {}
