package strikeoff.report.outcome;

/**
 * What keeps a file from being read as a plan.
 *
 * @param path as far as it is known; may be empty
 * @param line as it stands in the file; empty behind the file's end, and where it is longer than
 *     anybody would read
 */
public record Mistake(String path, Region region, String message, String line) {}
