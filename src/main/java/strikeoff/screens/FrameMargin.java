package strikeoff.screens;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/**
 * Room between a screen's image and the inside of its frame. The squeegee is pulled along the
 * length, so paste lies at the two ends of the length and the blade's ends run along the two sides.
 *
 * @param well free length at each end; below zero if the image is longer than the inside
 * @param side free width at each side; likewise
 * @param least the smaller of the two
 * @param frameLengthNeeded outside length that leaves the policy's room for paste
 * @param frameWidthNeeded outside width that leaves the policy's room at the sides; neither is less
 *     than the frame has
 */
public record FrameMargin(
    String screen,
    Length imageLength,
    Length imageWidth,
    Length insideLength,
    Length insideWidth,
    Length well,
    Length side,
    Length least,
    Length frameLengthNeeded,
    Length frameWidthNeeded,
    PlanPath path)
    implements Evidence {

  static FrameMargin of(Screen screen, Policy policy) {
    double rails = 2 * screen.rail().mm();
    double imageLength = screen.imageLength().mm();
    double imageWidth = screen.imageWidth().mm();
    Length well = oneSide(screen.insideLength(), screen.imageLength());
    Length side = oneSide(screen.insideWidth(), screen.imageWidth());
    double wellNeeded = policy.limit("screens/well-margin").amount();
    double sideNeeded = policy.limit("screens/side-margin").amount();
    return new FrameMargin(
        screen.name(),
        screen.imageLength(),
        screen.imageWidth(),
        screen.insideLength(),
        screen.insideWidth(),
        well,
        side,
        well.compareTo(side) < 0 ? well : side,
        new Length(Math.max(screen.frameLength().mm(), imageLength + 2 * wellNeeded + rails)),
        new Length(Math.max(screen.frameWidth().mm(), imageWidth + 2 * sideNeeded + rails)),
        screen.path());
  }

  /**
   * What is left on either side of a thing in the middle of an opening, to a nanometre: lengths
   * read from inches or centimetres differ by less, and no limit may be crossed by that.
   */
  static Length oneSide(Length opening, Length thing) {
    return new Length(Math.rint((opening.mm() - thing.mm()) / 2 * 1e6) / 1e6);
  }
}
