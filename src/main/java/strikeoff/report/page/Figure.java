package strikeoff.report.page;

/** One of the main figures in the head of a page. */
public record Figure(String label, String value) {}
