package strikeoff.colour;

import java.util.Optional;
import strikeoff.plan.Colour;

/**
 * A design seen from across the room.
 *
 * @param mean estimate of its mean colour over its whole rectangle, wet, if its colours fall
 *     independently of each other; empty for a design of more colours than that can be worked out
 *     for
 * @param difference CIEDE2000 between the mean and the ground: how far the motif stands out; 0
 *     without a mean
 */
public record MotifLook(String design, Optional<Colour> mean, double difference) {}
