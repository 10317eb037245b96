package strikeoff.colour;

import strikeoff.plan.Colour;

/**
 * A paste and another one that it shares a place of the cloth with, both wet.
 *
 * @param without estimate of the other one's look there, alone on the ground
 * @param look estimate of both
 * @param difference CIEDE2000 between the two: what the paste adds to the other
 * @param missed CIEDE2000 between {@code look} and the paste's named colour
 * @param isLost whether nobody sees it there: it adds too little, it lies under an opaque colour,
 *     or it is a transparent colour that is lighter than the other, whose own colour never shows
 * @param isDulled whether it is a translucent colour printed over a darker one that is not very
 *     dark: it is seen, and comes out dull
 * @param isLike whether it is printed over the other and hardly told from it anyway, side by side
 */
public record Meeting(
    Colour without,
    Colour look,
    double difference,
    double missed,
    boolean isLost,
    boolean isDulled,
    boolean isLike) {}
