package strikeoff.sequence;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * What separations of one design share, by their films; without them as far as their rectangles and
 * printed areas tell.
 */
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

  /** The most area in cm² of another that one can lie on or under. */
  static double most(Design design, Separation one, Separation other) {
    return design
        .overlap(one, other)
        .map(Area::squareCm)
        .orElseGet(() -> Math.min(common(one, other), other.printed().squareCm()));
  }

  /**
   * The share of what one prints that surely lies on or under others. Where films tell, that is
   * what they share with it, less what they share with each other. Prints without films are cut to
   * lie beside each other, and leave no more room in its rectangle.
   */
  static double certain(Design design, Separation one, Collection<Separation> others) {
    List<Separation> measured = new ArrayList<>();
    List<Separation> rest = new ArrayList<>();
    double most = 0;
    double sum = 0;
    for (Separation other : others) {
      Optional<Area> shared = design.overlap(one, other);
      (shared.isPresent() ? measured : rest).add(other);
      double area = shared.map(Area::squareCm).orElse(0.0);
      most = Math.max(most, area);
      sum += area;
    }
    // Bonferroni: what two of the others share is counted twice.
    for (int i = 0; i < measured.size(); i++) {
      for (Separation other : measured.subList(0, i)) {
        sum -=
            design
                .overlap(measured.get(i), other)
                .map(Area::squareCm)
                .orElseGet(() -> Double.POSITIVE_INFINITY);
      }
    }
    double printed = one.printed().squareCm();
    double taken = rest.stream().mapToDouble(o -> within(o, one)).sum();
    double byRoom = taken + printed - one.rectangle().squareCm();
    return clamp(Math.max(Math.max(most, sum), byRoom) / printed);
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
