package strikeoff.report.page;

/**
 * A line of the plan as it stands in the file.
 *
 * @param label what it has to do with the finding; empty for the finding's own line
 */
public record Quote(String label, int line, String text) {}
