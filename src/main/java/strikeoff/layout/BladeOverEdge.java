package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * Frames of one arrangement that reach past a long edge of the cloth, so that the edge lies under
 * them.
 *
 * @param edge {@code near edge} or {@code far edge}
 * @param screen whose frame reaches furthest
 * @param framePast how far it reaches past the cloth's edge; above zero
 * @param bladePast how far the squeegee's blade, in the middle of its frame, reaches past it; zero
 *     if it stays on the cloth or its length isn't known
 * @param inset how much further in the arrangement would keep the blade on the cloth
 */
public record BladeOverEdge(
    String arrangement,
    String edge,
    String screen,
    Length framePast,
    Length bladePast,
    Length inset,
    PlanPath path)
    implements Evidence {

  static List<BladeOverEdge> of(PrintPlan plan, Layout layout) {
    List<BladeOverEdge> found = new ArrayList<>();
    double width = plan.cloth().width().mm();
    for (Map.Entry<String, List<Placement>> arranged : layout.arrangements().entrySet()) {
      PlanPath path = plan.arrangements().get(arranged.getKey()).path();
      Past near = new Past();
      Past far = new Past();
      for (Placement placement : arranged.getValue()) {
        for (Footprint footprint : layout.footprintsOf(placement.id())) {
          Envelope frame = footprint.frame().getEnvelopeInternal();
          double middle = frame.centre().y;
          double halfBlade = halfBlade(footprint);
          String screen = footprint.screen().name();
          near.look(screen, -frame.getMinY(), halfBlade - middle);
          far.look(screen, frame.getMaxY() - width, middle + halfBlade - width);
        }
      }
      near.addTo(found, arranged.getKey(), "near edge", path);
      far.addTo(found, arranged.getKey(), "far edge", path);
    }
    return found;
  }

  /** Half of what the blade takes across the cloth as it lies; below the image where not known. */
  private static double halfBlade(Footprint footprint) {
    double degrees = footprint.placement().turn().degrees();
    double across = Math.abs(Math.cos(Math.toRadians(degrees)));
    return footprint.screen().squeegee().map(blade -> blade.mm() / 2 * across).orElse(0.0);
  }

  private static final class Past {

    private String screen = "";
    private double frame;
    private double blade;

    void look(String name, double framePast, double bladePast) {
      if (framePast > frame + Tube.ROUNDING) {
        frame = framePast;
        screen = name;
      }
      if (bladePast > blade + Tube.ROUNDING) {
        blade = bladePast;
        screen = name;
      }
    }

    void addTo(List<BladeOverEdge> found, String arrangement, String edge, PlanPath path) {
      if (frame > 0) {
        found.add(
            new BladeOverEdge(
                arrangement,
                edge,
                screen,
                new Length(frame),
                new Length(blade),
                new Length(blade),
                path));
      }
    }
  }
}
