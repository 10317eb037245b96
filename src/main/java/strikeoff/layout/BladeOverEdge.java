package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Cloth;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PullWay;
import strikeoff.plan.Screen;
import strikeoff.units.Length;

/**
 * Frames of one arrangement that reach past the long edges of the cloth, so that an edge lies under
 * them.
 *
 * @param edges the near one, the far one, or both
 * @param screen whose frame reaches furthest
 * @param framePast how far it reaches past the cloth's edge; above zero
 * @param bladePast how far the squeegee's blade, in the middle of its frame, reaches past it; zero
 *     if it stays on the cloth or its length isn't known; as much further in would keep it on
 * @param selvedge of the cloth
 */
public record BladeOverEdge(
    String arrangement,
    List<ClothEdge> edges,
    String screen,
    Length framePast,
    Length bladePast,
    Length selvedge,
    PlanPath path)
    implements Evidence {

  public BladeOverEdge {
    edges = List.copyOf(edges);
  }

  static List<BladeOverEdge> of(PrintPlan plan, Layout layout) {
    List<BladeOverEdge> found = new ArrayList<>();
    for (Map.Entry<String, List<Placement>> arranged : layout.arrangements().entrySet()) {
      Past past = new Past(plan.cloth());
      for (Placement placement : arranged.getValue()) {
        layout.footprintsOf(placement.id()).forEach(past::look);
      }
      past.fact(arranged.getKey(), plan.arrangements().get(arranged.getKey()).path())
          .ifPresent(found::add);
    }
    return found;
  }

  /**
   * Half of what the blade takes across the cloth as it lies, pulled whichever way it spans the
   * image, and the kinder one of two; zero where its length isn't known.
   */
  private static double halfBlade(Footprint footprint) {
    double turn = Math.toRadians(footprint.placement().turn().degrees());
    Screen screen = footprint.screen();
    double half = screen.squeegee().map(blade -> blade.mm() / 2).orElse(0.0);
    return screen.pullWays().stream()
        .mapToDouble(way -> half * Math.abs(way == PullWay.ALONG ? Math.cos(turn) : Math.sin(turn)))
        .min()
        .orElse(0);
  }

  /** How far frames and blades reach past the two edges, worst first. */
  private static final class Past {

    private final double width;
    private final Length selvedge;
    private String screen = "";
    private double frame;
    private double blade;
    private boolean near;
    private boolean far;

    Past(Cloth cloth) {
      this.width = cloth.width().mm();
      this.selvedge = cloth.selvedge();
    }

    void look(Footprint footprint) {
      Envelope lies = footprint.frame().getEnvelopeInternal();
      double middle = lies.centre().y;
      double halfBlade = halfBlade(footprint);
      near |= lies.getMinY() < -Length.TOLERANCE;
      far |= lies.getMaxY() > width + Length.TOLERANCE;
      double framePast = Math.max(-lies.getMinY(), lies.getMaxY() - width);
      double bladePast = Math.max(halfBlade - middle, middle + halfBlade - width);
      if (bladePast > blade + Length.TOLERANCE) {
        blade = bladePast;
        screen = footprint.screen().name();
      }
      if (framePast > frame + Length.TOLERANCE) {
        frame = framePast;
        screen = blade > 0 ? screen : footprint.screen().name();
      }
    }

    Optional<BladeOverEdge> fact(String arrangement, PlanPath path) {
      List<ClothEdge> edges = new ArrayList<>();
      if (near) {
        edges.add(ClothEdge.NEAR);
      }
      if (far) {
        edges.add(ClothEdge.FAR);
      }
      return !edges.isEmpty()
          ? Optional.of(
              new BladeOverEdge(
                  arrangement, edges, screen, new Length(frame), new Length(blade), selvedge, path))
          : Optional.empty();
    }
  }
}
