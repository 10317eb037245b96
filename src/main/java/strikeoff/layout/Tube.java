package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import strikeoff.document.GivenUp;
import strikeoff.plan.Cloth;
import strikeoff.units.Area;
import strikeoff.units.Length;

/**
 * How x runs on the cloth: to an end, or round a tube where x = 0 and x = circumference are one
 * place. Everybody who asks whether two things on the cloth meet asks here, so that a tube's seam
 * is never forgotten. Coordinates and distances are in millimetres.
 *
 * @param closed true for a tube
 * @param circumference length of the cloth, above zero
 */
public record Tube(boolean closed, double circumference) {

  /** Anything that goes round more often covers the same places again and again. */
  private static final int MOST_TURNS = 32;

  private static final double SQUARE_MM_IN_CM = 100;

  public Tube {
    if (!(circumference > 0) || Double.isInfinite(circumference)) {
      throw new IllegalArgumentException("no cloth of length " + circumference);
    }
  }

  public static Tube of(Cloth cloth) {
    return new Tube(cloth.closed(), cloth.length().mm());
  }

  /**
   * An x brought to where it lies on the cloth: 0 ≤ x &lt; circumference on a tube, else itself.
   */
  public double wrap(double x) {
    if (!closed) {
      return x;
    }
    double inside = x - circumference * Math.floor(x / circumference);
    return inside >= circumference ? 0 : inside;
  }

  /**
   * The area that two shapes share, none if they share no more than a strip as wide as the
   * tolerance. On a tube one shape is taken as often as it meets the other going round.
   */
  public Area overlap(Geometry one, Geometry other) {
    GivenUp.ifAsked();
    double area = 0;
    for (double shift : shifts(one, other)) {
      area += shared(one, other, shift);
    }
    return new Area(area / SQUARE_MM_IN_CM);
  }

  /**
   * How far the other shape is moved along the cloth each time that it may meet the one going
   * round.
   */
  List<Double> shifts(Geometry one, Geometry other) {
    Envelope a = one.getEnvelopeInternal();
    Envelope b = other.getEnvelopeInternal();
    List<Double> shifts = new ArrayList<>();
    for (int turn = firstTurn(a, b); turn <= lastTurn(a, b); turn++) {
      shifts.add(turn * circumference);
    }
    return shifts;
  }

  /** True if two shapes share more than an edge. */
  public boolean overlaps(Geometry one, Geometry other) {
    return overlap(one, other).squareCm() > 0;
  }

  /** The shortest distance between two shapes, on a tube the shorter way round; 0 if they meet. */
  public double distance(Geometry one, Geometry other) {
    GivenUp.ifAsked();
    if (!closed) {
      return apart(one, other, 0);
    }
    Envelope a = one.getEnvelopeInternal();
    Envelope b = other.getEnvelopeInternal();
    double nearest = Double.POSITIVE_INFINITY;
    for (int turn = firstTurn(a, b) - 1; turn <= lastTurn(a, b) + 1; turn++) {
      nearest = Math.min(nearest, apart(one, other, turn * circumference));
    }
    return nearest;
  }

  /**
   * The bounds of a shape where it lies on the cloth: one rectangle, or two on a tube if it lies
   * across the seam.
   */
  public List<Envelope> bounds(Envelope shape) {
    if (!closed) {
      return List.of(shape);
    }
    if (shape.getWidth() >= circumference) {
      return List.of(new Envelope(0, circumference, shape.getMinY(), shape.getMaxY()));
    }
    double from = wrap(shape.getMinX());
    double to = from + shape.getWidth();
    if (to <= circumference) {
      return List.of(new Envelope(from, to, shape.getMinY(), shape.getMaxY()));
    }
    return List.of(
        new Envelope(from, circumference, shape.getMinY(), shape.getMaxY()),
        new Envelope(0, to - circumference, shape.getMinY(), shape.getMaxY()));
  }

  /**
   * True if a line across the cloth at x runs through the inside of a stretch, not along its end.
   */
  public boolean runsThrough(double x, double from, double to) {
    double line = x;
    if (closed) {
      double turns = Math.floor((from + Length.TOLERANCE - x) / circumference) + 1;
      line = x + circumference * turns;
    }
    return from + Length.TOLERANCE < line && line < to - Length.TOLERANCE;
  }

  /** Distance of a stretch from a line across the cloth at x; 0 if the line runs through it. */
  public double distanceToLine(double x, double from, double to) {
    if (!closed) {
      return Math.max(0, Math.max(from - x, x - to));
    }
    // The stretch ends "after" beyond the last passing of the line before its end.
    double after = wrap(to - x);
    double length = to - from;
    return after <= length ? 0 : Math.min(after - length, circumference - after);
  }

  private int firstTurn(Envelope a, Envelope b) {
    return closed ? turns(Math.ceil((a.getMinX() - b.getMaxX()) / circumference)) : 0;
  }

  private int lastTurn(Envelope a, Envelope b) {
    return closed ? turns(Math.floor((a.getMaxX() - b.getMinX()) / circumference)) : 0;
  }

  private static int turns(double turns) {
    return (int) Math.max(-MOST_TURNS, Math.min(MOST_TURNS, turns));
  }

  private static double shared(Geometry one, Geometry other, double shift) {
    Envelope a = one.getEnvelopeInternal();
    Envelope b = other.getEnvelopeInternal();
    double length =
        Math.min(a.getMaxX(), b.getMaxX() + shift) - Math.max(a.getMinX(), b.getMinX() + shift);
    double width = Math.min(a.getMaxY(), b.getMaxY()) - Math.max(a.getMinY(), b.getMinY());
    if (length <= Length.TOLERANCE || width <= Length.TOLERANCE) {
      return 0;
    }
    if (one.isRectangle() && other.isRectangle()) {
      return length * width;
    }
    Geometry common = OverlayNGRobust.overlay(one, moved(other, shift), OverlayNG.INTERSECTION);
    // A sliver along a slanting side is as wide as its area divided by how long it is.
    double longest = common.getEnvelopeInternal().getDiameter();
    return common.getArea() <= Length.TOLERANCE * longest ? 0 : common.getArea();
  }

  private static double apart(Geometry one, Geometry other, double shift) {
    if (one.isRectangle() && other.isRectangle()) {
      Envelope b = new Envelope(other.getEnvelopeInternal());
      b.translate(shift, 0);
      return one.getEnvelopeInternal().distance(b);
    }
    return one.distance(moved(other, shift));
  }

  private static Geometry moved(Geometry shape, double shift) {
    return shift == 0 ? shape : AffineTransformation.translationInstance(shift, 0).transform(shape);
  }
}
