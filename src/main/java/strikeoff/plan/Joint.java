package strikeoff.plan;

import java.util.Optional;
import strikeoff.plan.Artwork.Finest;
import strikeoff.units.Length;

/**
 * How two films of one rectangle meet; known to one of their points either way.
 *
 * @param one number of the separation that is listed first
 * @param other number of the other one
 * @param point the larger side of a point, on the cloth
 * @param lap the narrowest lap that has one of them alone on its one side and the other on its
 *     other; empty if there is none of up to 4 mm
 * @param gap the narrowest bare ground between them, likewise
 * @param butt over how much they meet without either
 */
public record Joint(
    int one, int other, Length point, Optional<Finest> lap, Optional<Finest> gap, Length butt) {

  /** The same of others. */
  public Joint between(int first, int second) {
    return new Joint(first, second, point, lap, gap, butt);
  }
}
