package strikeoff.rulebook.own;

/**
 * Something that was read of a line.
 *
 * @param end the word after it
 */
record Got<T>(T value, int end) {}
