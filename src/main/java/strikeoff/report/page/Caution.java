package strikeoff.report.page;

/** What to mind, and why. */
public record Caution(String what, String why) {}
