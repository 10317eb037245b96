package strikeoff.artwork;

import java.util.stream.Stream;
import strikeoff.units.Angle;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * How far a film may lie from where it should, to be taken for the same drawing.
 *
 * @param moved along, and across
 * @param larger how much larger or smaller it may be
 * @param skewed how far it may be turned, either way
 */
public record PoseBounds(Length moved, Share larger, Angle skewed) {

  /** All of it, to the last bit of each number. */
  Stream<Double> all() {
    return Stream.of(moved.mm(), larger.fraction(), skewed.degrees());
  }
}
