package strikeoff.report.outcome;

/**
 * A place of a plan's file.
 *
 * @param label what it has to do with the finding; empty for the finding's own place
 * @param path keys and list numbers that lead to it, as {@code run[3].print}
 * @param line the first line of it as it stands in the file
 */
public record Spot(String label, String path, Region region, String line) {}
