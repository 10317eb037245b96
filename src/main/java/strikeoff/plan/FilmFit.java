package strikeoff.plan;

import java.util.List;
import strikeoff.units.Angle;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * How the edges of two films run along each other: of one, where the other begins within a lap or a
 * strip of ground of up to 4 mm, and how that would be if the one were moved over the other.
 *
 * @param edge how long the edges of that one of both are that has less, as far as they go round
 *     areas: lines and gaps of up to 4 mm have edges of their own; all where it prints lines alone
 * @param facing how much of them runs along the other's as they lie
 * @param facingMoved the same if it were moved so that it fits best
 * @param right how far the middle of the one that is listed first is moved for that; to the left if
 *     it is below zero
 * @param far the same towards the far edge
 * @param scale how large it is made for that, of what it is
 * @param skew how far it is turned about its middle for that, anticlockwise
 * @param spread how much the strip between them differs from one width as they lie, on average
 * @param spreadMoved the same once it is moved
 * @param half how much half of it differs from that width at most as they lie: edges that only pass
 *     by say nothing then
 * @param halfMoved the same once it is moved
 * @param lap how wide they lap then; ground if it is below zero
 * @param elsewhere how much of them would run along the other's at the best place that lies more
 *     than 4 mm from there, the less the less evenly; nothing if they fit as they lie
 * @param over how they would run along each other if one film were turned over, left for right
 * @param upended the same if it were turned over, top for bottom
 * @param round the same if it were turned by 180°
 */
public record FilmFit(
    Length edge,
    Length facing,
    Length facingMoved,
    Length right,
    Length far,
    Share scale,
    Angle skew,
    Length spread,
    Length spreadMoved,
    Length half,
    Length halfMoved,
    Length lap,
    Length elsewhere,
    Turned over,
    Turned upended,
    Turned round) {

  /**
   * How the edges would run along each other as one film is turned.
   *
   * @param facing how much of them would
   * @param spread how much the strip between them would differ from one width on average
   * @param half how much half of it would at most
   */
  public record Turned(Length facing, Length spread, Length half) {}

  /** The same where the other of the two is moved. */
  public FilmFit ofOther() {
    double back = 1 / scale.fraction();
    double cos = -back * skew.cos();
    double sin = -back * skew.sin();
    return laid(
        right.times(cos).plus(far.times(sin)),
        far.times(cos).minus(right.times(sin)),
        new Share(back),
        new Angle(-skew.degrees()));
  }

  /**
   * How far what prints comes to lie from where it was, at most.
   *
   * @param reach where on its rectangle it prints
   * @param length of the rectangle
   * @param width of it
   */
  public Length by(Artwork.Reach reach, Length length, Length width) {
    Length none = new Length(0);
    return apart(laid(none, none, new Share(1), new Angle(0)), reach, length, width);
  }

  /** How much further out it lies for its size alone, at most; further in if below zero. */
  public Length grown(Artwork.Reach reach, Length length, Length width) {
    Length none = new Length(0);
    return laid(none, none, scale, new Angle(0))
        .by(reach, length, width)
        .times(Math.signum(scale.fraction() - 1));
  }

  /** How far its ends lie off for its turn alone, were it turned about the middle of its print. */
  public Length skewed(Artwork.Reach reach) {
    double half =
        Math.hypot(reach.right().minus(reach.left()).mm(), reach.far().minus(reach.near()).mm())
            / 2;
    return new Length(half * Math.abs(Math.toRadians(skew.degrees())));
  }

  /** The same, but for how it is moved, made larger and turned. */
  private FilmFit laid(Length toRight, Length toFar, Share larger, Angle turn) {
    return new FilmFit(
        edge,
        facing,
        facingMoved,
        toRight,
        toFar,
        larger,
        turn,
        spread,
        spreadMoved,
        half,
        halfMoved,
        lap,
        elsewhere,
        over,
        upended,
        round);
  }

  /** Where a place comes to lie, both from the middle of the rectangle, to the right. */
  private double x(double along, double across) {
    return scale.fraction() * (skew.cos() * along - skew.sin() * across) + right.mm();
  }

  /** The same to the far edge. */
  private double y(double along, double across) {
    return scale.fraction() * (skew.sin() * along + skew.cos() * across) + far.mm();
  }

  /**
   * How far what prints comes to lie from where another fit has it, at most.
   *
   * @param reach where on its rectangle it prints
   * @param length of the rectangle
   * @param width of it
   */
  public Length apart(FilmFit other, Artwork.Reach reach, Length length, Length width) {
    double most = 0;
    for (double[] at : corners(reach, length, width)) {
      double x = x(at[0], at[1]) - other.x(at[0], at[1]);
      double y = y(at[0], at[1]) - other.y(at[0], at[1]);
      most = Math.max(most, Math.hypot(x, y));
    }
    return new Length(most);
  }

  /** Corners of what prints, from the middle of the rectangle. */
  private static List<double[]> corners(Artwork.Reach reach, Length length, Length width) {
    double left = reach.left().mm() - length.mm() / 2;
    double right = reach.right().mm() - length.mm() / 2;
    double near = reach.near().mm() - width.mm() / 2;
    double far = reach.far().mm() - width.mm() / 2;
    return List.of(
        new double[] {left, near},
        new double[] {left, far},
        new double[] {right, near},
        new double[] {right, far});
  }
}
