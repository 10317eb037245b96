package strikeoff.studio;

/**
 * A value that a policy file sets.
 *
 * @param where the file and line
 */
public record Setting<T>(T value, String where) {}
