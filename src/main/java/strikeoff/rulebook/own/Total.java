package strikeoff.rulebook.own;

import strikeoff.units.Quantity;

/** What a rule has added up, for its message: {@code {total}}. */
public record Total(Quantity total) {}
