package strikeoff.screens;

import java.util.stream.Stream;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PullWay;
import strikeoff.plan.Screen;
import strikeoff.policy.Limit;
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
 * @param wellWanted what should be free at each end
 * @param sideWanted likewise at each side
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
    Limit wellWanted,
    Limit sideWanted,
    Length frameLengthNeeded,
    Length frameWidthNeeded,
    PlanPath path)
    implements Evidence {

  /** By the way that is pulled; in the frame that is asked for another way may be. */
  static FrameMargin of(Screen screen, Policy policy) {
    PullWay way = Pulled.best(screen, policy);
    FrameMargin margin = of(screen, way, policy);
    return margin.clears(screen, policy)
        ? margin
        : Stream.of(PullWay.values())
            .filter(other -> other != way)
            .map(other -> of(screen, other, policy))
            .filter(other -> other.clears(screen, policy))
            .findFirst()
            .map(other -> margin.inFrame(other.frameLengthNeeded, other.frameWidthNeeded))
            .orElse(margin);
  }

  /** Whether the frame that is asked for leaves the room whichever way one then pulls. */
  private boolean clears(Screen screen, Policy policy) {
    Screen larger =
        new Screen(
            screen.name(),
            frameLengthNeeded,
            frameWidthNeeded,
            screen.rail(),
            screen.imageLength(),
            screen.imageWidth(),
            screen.mesh(),
            screen.thread(),
            screen.squeegee(),
            screen.path());
    FrameMargin then = of(larger, Pulled.best(larger, policy), policy);
    return !then.well.below(wellWanted.amount()) && !then.side.below(sideWanted.amount());
  }

  private FrameMargin inFrame(Length frameLength, Length frameWidth) {
    return new FrameMargin(
        screen,
        way,
        imageLength,
        imageWidth,
        insideLength,
        insideWidth,
        well,
        side,
        least,
        wellWanted,
        sideWanted,
        frameLength,
        frameWidth,
        path);
  }

  static FrameMargin of(Screen screen, PullWay way, Policy policy) {
    Length atEnds = oneSide(screen.insideLength(), screen.imageLength());
    Length acrossIt = oneSide(screen.insideWidth(), screen.imageWidth());
    Length well = way.travelled(atEnds, acrossIt);
    Length side = way.underBlade(atEnds, acrossIt);
    Limit wellWanted = policy.screens().wellMargin();
    Limit sideWanted = policy.screens().sideMargin();
    Length wellNeeded = new Length(wellWanted.amount());
    Length sideNeeded = new Length(sideWanted.amount());
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
        wellWanted,
        sideWanted,
        needed(screen, screen.frameLength(), screen.imageLength(), along ? wellNeeded : sideNeeded),
        needed(screen, screen.frameWidth(), screen.imageWidth(), along ? sideNeeded : wellNeeded),
        screen.path());
  }

  private static Length needed(Screen screen, Length frame, Length image, Length margin) {
    double least = image.mm() + 2 * margin.mm() + 2 * screen.rail().mm();
    return new Length(Math.max(frame.mm(), least));
  }

  /** What is left on either side of a thing in the middle of an opening. */
  static Length oneSide(Length opening, Length thing) {
    return opening.minus(thing).times(0.5);
  }
}
