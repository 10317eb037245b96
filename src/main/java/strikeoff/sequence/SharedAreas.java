package strikeoff.sequence;

import java.util.Collection;
import strikeoff.plan.Design.Separation;
import strikeoff.units.Length;

/** What separations of one design share, as far as their rectangles and printed areas tell. */
final class SharedAreas {

  private SharedAreas() {}

  /** Area in cm² that the rectangles of two have in common. */
  static double common(Separation p, Separation q) {
    return along(p.x(), p.length(), q.x(), q.length())
        * along(p.y(), p.width(), q.y(), q.width())
        / 100;
  }

  /** Area in cm² that one surely prints inside the rectangle of another. */
  private static double within(Separation one, Separation of) {
    double outside = one.rectangle().squareCm() - common(one, of);
    return Math.max(0, one.printed().squareCm() - outside);
  }

  /**
   * The share of what one prints that surely lies on or under others: their prints, which are cut
   * to lie beside each other, leave no more room in its rectangle.
   */
  static double certain(Separation one, Collection<Separation> others) {
    double printed = one.printed().squareCm();
    double taken = others.stream().mapToDouble(o -> within(o, one)).sum();
    return clamp((taken + printed - one.rectangle().squareCm()) / printed);
  }

  static double clamp(double share) {
    return Math.max(0, Math.min(1, share));
  }

  private static double along(Length from, Length length, Length otherFrom, Length otherLength) {
    double end = Math.min(from.mm() + length.mm(), otherFrom.mm() + otherLength.mm());
    double shared = end - Math.max(from.mm(), otherFrom.mm());
    return shared <= Length.TOLERANCE ? 0 : shared;
  }
}
