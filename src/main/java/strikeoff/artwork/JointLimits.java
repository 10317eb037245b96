package strikeoff.artwork;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * What how two films meet is measured by.
 *
 * @param strip bare ground between two films goes on for at least so long
 * @param narrow wider ground was meant to be seen
 * @param off how far a frame can be off
 * @param poses how far off a film may lie, to be taken for the same drawing
 */
public record JointLimits(Length strip, Length narrow, Length off, PoseBounds poses) {

  /** All of it, to the last bit of each number. */
  String text() {
    return Stream.concat(Stream.of(strip.mm(), narrow.mm(), off.mm()), poses.all())
        .map(String::valueOf)
        .collect(Collectors.joining(" "));
  }

  /** The same where nobody asks for another size. */
  JointLimits ofOneSize() {
    return new JointLimits(
        strip, narrow, off, new PoseBounds(poses.moved(), new Share(0), poses.skewed()));
  }
}
