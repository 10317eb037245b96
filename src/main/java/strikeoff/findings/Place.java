package strikeoff.findings;

import strikeoff.document.PlanPath;
import strikeoff.document.Position;

/**
 * A place of a plan's file.
 *
 * @param label what it has to do with the finding; empty for the finding's own place
 * @param excerpt the line as it stands in the file
 */
public record Place(String label, PlanPath path, Position position, String excerpt) {}
