package strikeoff.report.page;

/**
 * A state of the cloth to step to.
 *
 * @param from when it begins, in minutes of the run's clock
 * @param minute when it ends, of the run's clock, as the drawing's impressions carry it
 * @param clock as people read it
 * @param words what was just done
 */
public record Stage(String from, String minute, String clock, String words) {}
