package strikeoff.evidence;

/**
 * What a kind of estimate rests on, for whoever reads a report and asks how far to trust it.
 *
 * @param estimate what is estimated
 * @param method by which model, and what it takes for granted
 * @param holds the limits inside which the model was checked, and what happens outside them
 * @param source who published it
 */
public record Basis(String estimate, String method, String holds, String source) {}
