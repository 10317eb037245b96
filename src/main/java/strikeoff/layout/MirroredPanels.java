package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * Two arrangements that answer each other across a line, one as drawn and one mirrored, as on the
 * two panels of a curtain.
 *
 * @param arrangement as drawn
 * @param mirrored its answer, as many copies
 * @param axis where along the cloth the line lies that fits the pairs best
 * @param misfit how far the worst copy lies from the mirror image of its partner
 */
public record MirroredPanels(
    String arrangement,
    String mirrored,
    Length axis,
    Length misfit,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public MirroredPanels {
    related = List.copyOf(related);
  }

  static List<MirroredPanels> of(PrintPlan plan, Layout layout) {
    List<MirroredPanels> found = new ArrayList<>();
    for (Arrangement one : plan.arrangements().values()) {
      for (Arrangement other : plan.arrangements().values()) {
        boolean pair =
            !one.mirrored()
                && other.mirrored()
                && size(plan, one).equals(size(plan, other))
                && !layout.of(one.name()).isEmpty()
                && layout.of(one.name()).size() == layout.of(other.name()).size();
        if (pair) {
          found.add(of(layout, one, other));
        }
      }
    }
    return found;
  }

  private static MirroredPanels of(Layout layout, Arrangement one, Arrangement other) {
    List<Coordinate> drawn = centres(layout, one.name(), 1);
    List<Coordinate> answer = centres(layout, other.name(), -1);
    double axis = 0;
    for (int i = 0; i < drawn.size(); i++) {
      axis += (drawn.get(i).x + answer.get(i).x) / 2 / drawn.size();
    }
    double misfit = 0;
    for (int i = 0; i < drawn.size(); i++) {
      Coordinate image = new Coordinate(2 * axis - drawn.get(i).x, drawn.get(i).y);
      misfit = Math.max(misfit, image.distance(answer.get(i)));
    }
    return new MirroredPanels(
        one.name(),
        other.name(),
        new Length(axis),
        new Length(misfit < Tube.ROUNDING ? 0 : misfit),
        other.path(),
        List.of(new Related("as drawn", one.path())));
  }

  /** Copies outwards from the line, so that partners stand at one index. */
  private static List<Coordinate> centres(Layout layout, String arrangement, int direction) {
    List<Coordinate> centres = new ArrayList<>();
    for (Placement placement : layout.of(arrangement)) {
      centres.add(placement.outline().getEnvelopeInternal().centre());
    }
    centres.sort(
        (a, b) -> a.x == b.x ? Double.compare(a.y, b.y) : direction * Double.compare(a.x, b.x));
    return centres;
  }

  private static List<Length> size(PrintPlan plan, Arrangement arrangement) {
    return List.of(
        plan.designs().get(arrangement.design()).length(),
        plan.designs().get(arrangement.design()).width());
  }
}
