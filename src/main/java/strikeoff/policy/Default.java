package strikeoff.policy;

/**
 * What is taken when a plan leaves a value open.
 *
 * @param name the value's name, {@code handling.lay}
 * @param value as a plan would write it
 * @param source where it comes from
 */
public record Default(String name, String value, String source) {}
