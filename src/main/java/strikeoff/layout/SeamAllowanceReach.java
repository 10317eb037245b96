package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.units.Length;

/**
 * Images of one arrangement that end within a seam's allowance without crossing the seam: they lie
 * half on what is turned in, or on the ridge beside the seam.
 *
 * @param placements those images' placements, as people call them
 * @param into how far the furthest reaches into the allowance
 * @param allowance of the seam on each side
 */
public record SeamAllowanceReach(
    String seam,
    Length at,
    Length allowance,
    String arrangement,
    String placements,
    int count,
    Length into,
    List<String> marks,
    PlanPath path,
    PlanPath seamPath)
    implements Evidence {

  public SeamAllowanceReach {
    marks = List.copyOf(marks);
  }

  static List<SeamAllowanceReach> of(PrintPlan plan, Layout layout) {
    List<SeamAllowanceReach> reaches = new ArrayList<>();
    for (Seam seam : plan.seams().values()) {
      for (Map.Entry<String, List<Placement>> arranged : layout.arrangements().entrySet()) {
        double deepest = 0;
        List<Placement> inside = new ArrayList<>();
        for (Placement placement : arranged.getValue()) {
          double into = into(layout, placement, seam);
          if (into > Tube.ROUNDING) {
            inside.add(placement);
            deepest = Math.max(deepest, into);
          }
        }
        if (!inside.isEmpty()) {
          reaches.add(
              new SeamAllowanceReach(
                  seam.name(),
                  seam.at(),
                  seam.allowance(),
                  arranged.getKey(),
                  Numbering.places(inside),
                  inside.size(),
                  new Length(deepest),
                  inside.stream().map(Placement::name).toList(),
                  plan.arrangements().get(arranged.getKey()).path(),
                  seam.path()));
        }
      }
    }
    return reaches;
  }

  /** How far a placement's images reach into the allowance; 0 if one crosses the seam itself. */
  private static double into(Layout layout, Placement placement, Seam seam) {
    double at = seam.at().mm();
    double allowance = seam.allowance().mm();
    double deepest = 0;
    for (Footprint footprint : layout.footprintsOf(placement.id())) {
      Envelope image = footprint.image().getEnvelopeInternal();
      if (layout.tube().runsThrough(at, image.getMinX(), image.getMaxX())) {
        return 0;
      }
      double free = layout.tube().distanceToLine(at, image.getMinX(), image.getMaxX());
      deepest = Math.max(deepest, allowance - free);
    }
    return deepest;
  }

  @Override
  public List<Related> related() {
    return List.of(new Related("the seam", seamPath));
  }
}
