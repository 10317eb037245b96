package strikeoff.rulebook.own;

/** How many a rule has counted, for its message: {@code {count}}. */
public record Counted(int count) {}
