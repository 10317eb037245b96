package strikeoff.report.outcome;

/**
 * What keeps a file from being read as a plan.
 *
 * @param path as far as it is known; may be empty
 */
public record Mistake(String path, Region region, String message) {}
