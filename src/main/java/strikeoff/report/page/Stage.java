package strikeoff.report.page;

/**
 * A state of the cloth to step to.
 *
 * @param minute of the run's clock, as the drawing's impressions carry it
 * @param clock as people read it
 * @param words what was just done
 */
public record Stage(String minute, String clock, String words) {}
