package strikeoff.colour;

import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * How much two separations of a design lie over each other: as measured on their films, or else as
 * far as their rectangles and printed areas tell.
 *
 * @param least what they must share: both printed areas have to fit into the union of the
 *     rectangles
 * @param expected what they share if they fall independently of each other, each evenly over its
 *     rectangle
 * @param most what they can share
 */
record SharedArea(Area least, Area expected, Area most) {

  static SharedArea of(Design design, Separation p, Separation q) {
    return design.overlap(p, q).map(a -> new SharedArea(a, a, a)).orElseGet(() -> guessed(p, q));
  }

  static SharedArea guessed(Separation p, Separation q) {
    double along = common(p.x().mm(), p.length().mm(), q.x().mm(), q.length().mm());
    double across = common(p.y().mm(), p.width().mm(), q.y().mm(), q.width().mm());
    double common = along * across / 100;
    double rectangleP = p.rectangle().squareCm();
    double rectangleQ = q.rectangle().squareCm();
    double union = rectangleP + rectangleQ - common;
    double printedP = p.printed().squareCm();
    double printedQ = q.printed().squareCm();
    double most = Math.min(common, Math.min(printedP, printedQ));
    double least = Math.min(most, Math.max(0, printedP + printedQ - union));
    double expected = printedP / rectangleP * (printedQ / rectangleQ) * common;
    double within = Math.max(least, Math.min(most, expected));
    return new SharedArea(new Area(least), new Area(within), new Area(most));
  }

  boolean isPossible() {
    return most.squareCm() > 0;
  }

  private static double common(double from, double length, double otherFrom, double otherLength) {
    double shared = Math.min(from + length, otherFrom + otherLength) - Math.max(from, otherFrom);
    return shared <= Length.TOLERANCE ? 0 : shared;
  }
}
