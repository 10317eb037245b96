package strikeoff.start;

/**
 * A quantity as a person wrote it.
 *
 * @param text kept, so that the plan says what was said
 * @param value what it means
 */
public record Said<T>(String text, T value) {}
