package strikeoff.colour;

import java.util.List;
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
 * @param looks how its colours come out over each other, wet, the n-th separation standing for 2 to
 *     the power of n - 1; empty for a design of more colours than that can be worked out for
 */
public record MotifLook(
    String design, Optional<Colour> mean, double difference, List<Colour> looks) {

  public MotifLook {
    looks = List.copyOf(looks);
  }
}
