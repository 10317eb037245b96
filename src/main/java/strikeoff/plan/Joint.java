package strikeoff.plan;

import java.util.Optional;
import java.util.function.UnaryOperator;
import strikeoff.plan.Artwork.Finest;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * How two films meet; known to one of their points either way, the coarser ones. Places lie on the
 * rectangle of the one that is listed later, or at its edge.
 *
 * @param one number of the separation that is listed first
 * @param other number of the other one
 * @param point the larger side of a point, on the cloth
 * @param lap the narrowest lap that has one of them alone on its one side and the other on its
 *     other; empty if there is none of up to 4 mm
 * @param wideLap the widest such lap of up to 10 mm
 * @param lapped over how much they have such laps of up to 10 mm
 * @param gap the narrowest bare ground between them, likewise, where no third film prints
 * @param butt over how much they meet without either, to a point, and under no third: of no width,
 *     and where the longest such edge is; empty if they meet so nowhere
 * @param gapUpTo the widest of such ground that is no wider than what was meant to be seen, and
 *     over how much there is any; empty if there is none
 * @param fit how their edges run along each other; empty if one of them has none
 * @param both area that both print
 * @param ofOne what follows of the one where it is printed first, and where it is laid off
 * @param ofOther the same of the other
 */
public record Joint(
    int one,
    int other,
    Length point,
    Optional<Finest> lap,
    Optional<Finest> wideLap,
    Length lapped,
    Optional<Finest> gap,
    Optional<Finest> butt,
    Optional<Strips> gapUpTo,
    Optional<FilmFit> fit,
    Area both,
    Side ofOne,
    Side ofOther) {

  /**
   * One of two films against the other.
   *
   * @param inside what of it lies inside the other by more than a frame can be off
   * @param bare ground that opens between the two where it is laid off by so much, in the worst of
   *     eight directions: it lay there or nearer to the other, and no film of the design covers it
   * @param wide how wide it is by itself, across the narrowest lap; empty from 4 mm on, and without
   *     a lap
   * @param rim where it stands out past lines of the other that are drawn over it; empty if that is
   *     nowhere
   */
  public record Side(Area inside, Area bare, Optional<Length> wide, Optional<Rim> rim) {

    /** The same of one that is so wide, and stands out so. */
    public Side with(Optional<Length> own, Optional<Rim> past) {
      return new Side(inside, bare, own, past);
    }
  }

  /**
   * A rim of a colour between ground and a line that is drawn over that colour.
   *
   * @param width on average
   * @param over how long it is, as far as it keeps its width
   * @param line how wide that line is, on average; empty from 4 mm on
   */
  public record Rim(Length width, Length over, Optional<Length> line) {}

  /**
   * Strips of bare ground.
   *
   * @param widest of them
   * @param over how long they are together
   */
  public record Strips(Length widest, Length over) {}

  /** The same of others. */
  public Joint between(int first, int second) {
    return new Joint(
        first, second, point, lap, wideLap, lapped, gap, butt, gapUpTo, fit, both, ofOne, ofOther);
  }

  /**
   * The same with places that are seen from elsewhere, within a rectangle.
   *
   * @param x how far they lie further to the right from there
   * @param y how far they lie further away
   * @param length of that rectangle
   * @param width of it
   */
  public Joint moved(Length x, Length y, Length length, Length width) {
    UnaryOperator<Finest> there =
        f ->
            new Finest(
                f.width(), f.over(), within(f.x().plus(x), length), within(f.y().plus(y), width));
    return new Joint(
        one,
        other,
        point,
        lap.map(there),
        wideLap.map(there),
        lapped,
        gap.map(there),
        butt.map(there),
        gapUpTo,
        fit,
        both,
        ofOne,
        ofOther);
  }

  private static Length within(Length at, Length side) {
    return new Length(Math.max(0, Math.min(side.mm(), at.mm())));
  }

  /** The same of films that are known to a coarser point. */
  public Joint knownTo(Length coarser) {
    return new Joint(
        one, other, coarser, lap, wideLap, lapped, gap, butt, gapUpTo, fit, both, ofOne, ofOther);
  }

  /**
   * Over how much they meet edge to edge, where that is not the lesser part of a lap or of a strip
   * of ground that is hardly wider than a point.
   */
  public Length butting() {
    Length over = butt.map(Finest::over).orElse(new Length(0));
    return hairOver(lap) > over.mm() || hairOver(gap) > over.mm() ? new Length(0) : over;
  }

  /** How long a strip is that may be taken for an edge here and there; nothing if it is wider. */
  private double hairOver(Optional<Finest> strip) {
    return strip.filter(this::isHair).map(s -> s.over().mm()).orElse(0.0);
  }

  /** True if it is no wider than two points: known to a point, it may be half of that. */
  private boolean isHair(Finest strip) {
    return !strip.width().above(2 * point.mm());
  }

  /** The narrowest bare ground, where it isn't the lesser part of an edge that butts. */
  public Optional<Finest> openGap() {
    return gap.filter(g -> !isHair(g) || butting().mm() == 0);
  }

  /**
   * True if ground lies between them that wasn't meant to be seen, and goes on for so long in all.
   */
  public boolean gapes(Length least) {
    return openGap().isPresent() && gapUpTo.filter(g -> g.over().mm() >= least.mm()).isPresent();
  }

  /** The side of one of them, by its number. */
  public Side of(int separation) {
    return separation == one ? ofOne : ofOther;
  }

  /** True if it is between those two, in any order. */
  public boolean isBetween(int first, int second) {
    return one == Math.min(first, second) && other == Math.max(first, second);
  }
}
