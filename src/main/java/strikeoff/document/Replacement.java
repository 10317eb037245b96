package strikeoff.document;

/**
 * Text that takes the place of other text in a file.
 *
 * @param from where the text begins that goes
 * @param to just behind its last character; the same as {@code from} where nothing goes
 * @param text what is written there instead
 */
public record Replacement(Position from, Position to, String text) {}
