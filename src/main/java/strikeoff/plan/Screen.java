package strikeoff.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;

/**
 * A screen. Lengths run along the cloth's x, widths along its y, when the frame lies unturned. The
 * squeegee is pulled whichever way its blade spans the image.
 *
 * @param frameLength outside of the frame along x: what touches the cloth
 * @param frameWidth outside of the frame along y
 * @param rail width of the frame's wood or metal, so that inside = outside − 2 · rail
 * @param imageLength the stencil's image along x
 * @param imageWidth the stencil's image along y
 * @param thread diameter of a mesh thread
 * @param squeegee length of the blade, if the plan gives it
 */
public record Screen(
    String name,
    Length frameLength,
    Length frameWidth,
    Length rail,
    Length imageLength,
    Length imageWidth,
    MeshCount mesh,
    Length thread,
    Optional<Length> squeegee,
    PlanPath path) {

  /** Free length between the rails. */
  public Length insideLength() {
    return frameLength.minus(rail.times(2));
  }

  /** Free width between the rails. */
  public Length insideWidth() {
    return frameWidth.minus(rail.times(2));
  }

  /**
   * The ways in which the blade spans the image and fits between the rails, lengths compared by the
   * one tolerance; both ways if its length isn't known.
   */
  public List<PullWay> pullWays() {
    return Arrays.stream(PullWay.values())
        .filter(way -> squeegee.map(blade -> spans(blade.mm(), way)).orElse(true))
        .toList();
  }

  private boolean spans(double blade, PullWay way) {
    return blade > way.underBlade(imageLength, imageWidth).mm() - Length.TOLERANCE
        && blade < way.underBlade(insideLength(), insideWidth()).mm() + Length.TOLERANCE;
  }
}
