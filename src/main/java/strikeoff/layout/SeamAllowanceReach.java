package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Arrangement;
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
 * @param closesRound true if the arrangement is a border round a tube, which closes where it lies:
 *     moved, it would not
 */
public record SeamAllowanceReach(
    String seam,
    Length at,
    Length allowance,
    String arrangement,
    String placements,
    int count,
    Length into,
    boolean closesRound,
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
                  layout.tube().closed()
                      && plan.arrangements().get(arranged.getKey()) instanceof Arrangement.Border,
                  inside.stream().map(Placement::name).toList(),
                  plan.arrangements().get(arranged.getKey()).path(),
                  seam.path()));
        }
      }
    }
    return reaches;
  }

  /** What keeps images out of the allowance, in words. */
  public String mending() {
    return closesRound
        ? "A border that closes round the tube can't move: write "
            + arrangement
            + " as a `series` with the same pitch that starts so that one image crosses the seam, and sew"
            + " and line the seam before (`sewn: yes, padded: yes`)"
        : "Move "
            + arrangement
            + " by "
            + into.text()
            + " away from the seam, or let the image cross it";
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
