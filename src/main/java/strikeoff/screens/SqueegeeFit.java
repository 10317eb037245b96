package strikeoff.screens;

import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PullWay;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/**
 * A squeegee against the image it has to cover and the frame it has to fit in, pulled the way that
 * suits it best.
 *
 * @param way it is pulled
 * @param imageSpan size of the image that the blade has to span, pulled that way
 * @param insideSpan size of the frame's inside beside it
 * @param overlap how far the blade reaches beyond the image on each side; below zero if it is
 *     shorter
 * @param room free room beside it inside the frame on each side; below zero if it is longer
 * @param wanted blade that overlaps by the policy's limit, or the inside if that is less
 */
public record SqueegeeFit(
    String screen,
    Length squeegee,
    PullWay way,
    Length imageLength,
    Length imageWidth,
    Length imageSpan,
    Length insideSpan,
    Length overlap,
    Length room,
    Length wanted,
    PlanPath path)
    implements Evidence {

  static Optional<SqueegeeFit> of(Screen screen, Policy policy) {
    return screen.squeegee().map(blade -> of(screen, blade, policy));
  }

  private static SqueegeeFit of(Screen screen, Length blade, Policy policy) {
    PullWay way = Pulled.best(screen, policy);
    Length image = way.underBlade(screen.imageLength(), screen.imageWidth());
    Length inside = way.underBlade(screen.insideLength(), screen.insideWidth());
    double overlap = policy.screens().squeegeeOverlap().mm();
    return new SqueegeeFit(
        screen.name(),
        blade,
        way,
        screen.imageLength(),
        screen.imageWidth(),
        image,
        inside,
        FrameMargin.oneSide(blade, image),
        FrameMargin.oneSide(inside, blade),
        new Length(Math.min(inside.mm(), image.mm() + 2 * overlap)),
        screen.path().key("squeegee"));
  }

  /** How much shorter than the image the blade is, if it is. */
  public Length shortBy() {
    return new Length(imageSpan.mm() - squeegee.mm());
  }

  /** How much longer than the inside of the frame the blade is, if it is. */
  public Length longBy() {
    return new Length(squeegee.mm() - insideSpan.mm());
  }
}
