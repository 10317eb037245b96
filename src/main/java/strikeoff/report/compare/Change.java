package strikeoff.report.compare;

/**
 * A figure that changed.
 *
 * @param name what it is
 * @param before in words; a dash if there was none
 * @param after in words; a dash if there is none
 * @param difference with its sign; empty if one side has none
 */
public record Change(String name, String before, String after, String difference) {}
