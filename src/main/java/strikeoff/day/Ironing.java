package strikeoff.day;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import strikeoff.layout.Footprint;
import strikeoff.plan.HeatSource;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.units.Area;
import strikeoff.units.Span;

/**
 * What an iron or a press has to be set down on, motif by motif: it heats only what lies under its
 * sole, and paint lies anywhere in the image of a motif. An oven takes all at once.
 *
 * @param sole what it heats at a time
 * @param motifs how many placements hold paint
 * @param images area of their images, of each placement that of its largest separation: overlaps
 *     are not ironed twice
 * @param spots how often it is set down on one side: on a large image as often as the sole goes
 *     into it, on small ones that lie together under the sole once
 */
public record Ironing(Area sole, int motifs, Area images, int spots) {

  private static final double MM2_PER_CM2 = 100;

  /**
   * @param prints all that is printed since the last heat-set
   * @return empty for an oven
   */
  public static Optional<Ironing> of(List<Footprint> prints, HeatSource with, Policy policy) {
    return switch (with) {
      case IRON -> Optional.of(of(prints, policy.fixing().ironSole().squareCm()));
      case PRESS -> Optional.of(of(prints, policy.fixing().pressPlaten().squareCm()));
      case OVEN -> Optional.empty();
    };
  }

  private static Ironing of(List<Footprint> prints, double sole) {
    Map<Integer, Geometry> byPlacement = new LinkedHashMap<>();
    for (Footprint print : prints) {
      if (print.paste().medium() == Medium.PAINT) {
        byPlacement.merge(
            print.placement().id(),
            print.image(),
            (one, other) -> other.getArea() > one.getArea() ? other : one);
      }
    }
    double squareCm = 0;
    double spots = 0;
    Map<Coordinate, Envelope> soles = new HashMap<>();
    for (Geometry image : byPlacement.values()) {
      double area = image.getArea() / MM2_PER_CM2;
      squareCm += area;
      spots += area > sole ? Math.ceil(area / sole) : isUnderOne(soles, image, sole) ? 0 : 1;
    }
    return new Ironing(
        new Area(sole),
        byPlacement.size(),
        new Area(squareCm),
        (int) Math.min(Integer.MAX_VALUE, spots));
  }

  /** Whether the sole that is set down on its neighbours takes a small image along. */
  private static boolean isUnderOne(Map<Coordinate, Envelope> soles, Geometry image, double sole) {
    double side = Math.sqrt(sole * MM2_PER_CM2);
    Envelope box = image.getEnvelopeInternal();
    Coordinate cell =
        new Coordinate(
            Math.floor(box.centre().getX() / side), Math.floor(box.centre().getY() / side));
    Envelope there = soles.get(cell);
    if (there == null) {
      soles.put(cell, box);
      return false;
    }
    Envelope both = new Envelope(there);
    both.expandToInclude(box);
    if (both.getWidth() > side || both.getHeight() > side) {
      return false;
    }
    soles.put(cell, both);
    return true;
  }

  /** How long it takes: the step's time at every spot of every side, which the clock counts. */
  public Span total(Step.HeatSet step) {
    return new Span(Math.max(1.0, spots) * step.sides() * step.lasts().minutes());
  }
}
