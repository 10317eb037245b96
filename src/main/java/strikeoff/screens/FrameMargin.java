package strikeoff.screens;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PullWay;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/**
 * Room between a screen's image and the inside of its frame. Paste lies at the two ends of the way
 * that the squeegee is pulled, and the blade's ends run along the two sides.
 *
 * @param way the squeegee is pulled: the one that its blade spans, the roomier if it spans both
 * @param well what is free at each end; below zero if the image is longer than the inside
 * @param side what is free at each side; likewise
 * @param least the smaller of the two
 * @param frameLengthNeeded outside length that leaves the policy's room
 * @param frameWidthNeeded likewise the outside width; neither is less than the frame has
 */
public record FrameMargin(
    String screen,
    PullWay way,
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
    return of(screen, Pulled.best(screen, policy), policy);
  }

  static FrameMargin of(Screen screen, PullWay way, Policy policy) {
    Length atEnds = oneSide(screen.insideLength(), screen.imageLength());
    Length acrossIt = oneSide(screen.insideWidth(), screen.imageWidth());
    Length well = way.travelled(atEnds, acrossIt);
    Length side = way.underBlade(atEnds, acrossIt);
    Length wellNeeded = new Length(policy.limit("screens/well-margin").amount());
    Length sideNeeded = new Length(policy.limit("screens/side-margin").amount());
    boolean along = way == PullWay.ALONG;
    return new FrameMargin(
        screen.name(),
        way,
        screen.imageLength(),
        screen.imageWidth(),
        screen.insideLength(),
        screen.insideWidth(),
        well,
        side,
        well.compareTo(side) < 0 ? well : side,
        needed(screen, screen.frameLength(), screen.imageLength(), along ? wellNeeded : sideNeeded),
        needed(screen, screen.frameWidth(), screen.imageWidth(), along ? sideNeeded : wellNeeded),
        screen.path());
  }

  private static Length needed(Screen screen, Length frame, Length image, Length margin) {
    double least = image.mm() + 2 * margin.mm() + 2 * screen.rail().mm();
    return new Length(Math.max(frame.mm(), least));
  }

  /**
   * What is left on either side of a thing in the middle of an opening, to a nanometre: lengths
   * read from inches or centimetres differ by less, and no limit may be crossed by that.
   */
  static Length oneSide(Length opening, Length thing) {
    return new Length(Math.rint((opening.mm() - thing.mm()) / 2 * 1e6) / 1e6);
  }
}
