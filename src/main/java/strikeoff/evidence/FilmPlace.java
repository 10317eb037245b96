package strikeoff.evidence;

import strikeoff.units.Length;

/**
 * A place on a film.
 *
 * @param x from the left edge of its separation, as it is seen on the cloth
 * @param y from its near edge
 */
public record FilmPlace(Length x, Length y) {}
