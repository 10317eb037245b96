package strikeoff.plan;

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
 * @param spread how much the strip between them differs from one width as they lie, on average
 * @param spreadMoved the same once it is moved
 * @param lap how wide they lap then; ground if it is below zero
 * @param facingTurned how much of them would run along the other's if one film were turned over,
 *     left for right
 * @param spreadTurned how much the strip between them would differ from one width then
 */
public record FilmFit(
    Length edge,
    Length facing,
    Length facingMoved,
    Length right,
    Length far,
    Share scale,
    Length spread,
    Length spreadMoved,
    Length lap,
    Length facingTurned,
    Length spreadTurned) {

  /** The same where the other of the two is moved. */
  public FilmFit ofOther() {
    double back = -1 / scale.fraction();
    return new FilmFit(
        edge,
        facing,
        facingMoved,
        right.times(back),
        far.times(back),
        new Share(-back),
        spread,
        spreadMoved,
        lap,
        facingTurned,
        spreadTurned);
  }

  /**
   * How far what prints comes to lie from where it was, at most.
   *
   * @param reach where on its rectangle it prints
   * @param length of the rectangle
   * @param width of it
   */
  public Length by(Artwork.Reach reach, Length length, Length width) {
    return moved(right, far, reach, length, width);
  }

  /** How much further out it lies for its size alone, at most; further in if below zero. */
  public Length grown(Artwork.Reach reach, Length length, Length width) {
    Length none = new Length(0);
    return moved(none, none, reach, length, width).times(Math.signum(scale.fraction() - 1));
  }

  private Length moved(Length x, Length y, Artwork.Reach reach, Length length, Length width) {
    double along = Math.max(moved(x, reach.left(), length), moved(x, reach.right(), length));
    double across = Math.max(moved(y, reach.near(), width), moved(y, reach.far(), width));
    return new Length(Math.hypot(along, across));
  }

  private double moved(Length by, Length at, Length side) {
    return Math.abs(by.mm() + (scale.fraction() - 1) * (at.mm() - side.mm() / 2));
  }

  /** How far a corner comes to lie from where another fit has it, at most. */
  public Length apart(FilmFit other, Length length, Length width) {
    double larger = Math.abs(scale.fraction() - other.scale.fraction()) / 2;
    return new Length(
        Math.hypot(
            larger * length.mm() + Math.abs(right.minus(other.right).mm()),
            larger * width.mm() + Math.abs(far.minus(other.far).mm())));
  }
}
