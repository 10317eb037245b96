package strikeoff.policy;

/**
 * What is taken when a plan leaves a value open.
 *
 * @param <T> a quantity, a whole number, whether something is so, or the words of a plan
 * @param name the value's name, {@code handling.lay}
 * @param text the value as a plan would write it
 * @param source where it comes from
 */
public record Default<T>(String name, T value, String text, String source) {}
