package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.units.Length;

/**
 * Images of one arrangement that end within a seam's allowance without crossing the seam: they lie
 * half on what is turned in, or on the ridge beside the seam.
 *
 * @param copies those images' placements
 * @param into how far the furthest reaches into the allowance
 * @param allowance of the seam on each side
 * @param closesRound true if the arrangement is a border round a tube, which closes where it lies:
 *     moved, it would not
 * @param move what takes them out of it; empty if nothing does
 * @param sewnLater true if the run prints it before the seam is sewn, so that it is turned in
 */
public record SeamAllowanceReach(
    String seam,
    Length at,
    Length allowance,
    String arrangement,
    Copies copies,
    int count,
    Length into,
    boolean closesRound,
    Optional<SeamMove> move,
    boolean sewnLater,
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
          if (into > Length.TOLERANCE) {
            inside.add(placement);
            deepest = Math.max(deepest, into);
          }
        }
        if (!inside.isEmpty()) {
          boolean later = sewnLater(plan, seam, arranged.getKey());
          reaches.add(
              new SeamAllowanceReach(
                  seam.name(),
                  seam.at(),
                  seam.allowance(),
                  arranged.getKey(),
                  Copies.of(inside),
                  inside.size(),
                  new Length(deepest),
                  layout.tube().closed()
                      && plan.arrangements().get(arranged.getKey()) instanceof Arrangement.Border,
                  later
                      ? SeamMove.of(plan, layout, arranged.getKey(), false)
                      : SeamMove.ofImages(plan, layout, arranged.getKey()),
                  later,
                  inside.stream().map(Placement::name).toList(),
                  plan.arrangements().get(arranged.getKey()).path(),
                  seam.path()));
        }
      }
    }
    return reaches;
  }

  private static boolean sewnLater(PrintPlan plan, Seam seam, String arrangement) {
    for (Step step : plan.run()) {
      if (step instanceof Step.Sew sew && sew.seam().equals(seam.name())) {
        return false;
      }
      if (step instanceof PrintStep print && print.arrangements().contains(arrangement)) {
        return !seam.sewnBefore();
      }
    }
    return false;
  }

  /** The move as edits. */
  public List<List<Edit>> moves() {
    return move.map(m -> m.edits(path)).orElseGet(List::of);
  }

  /**
   * How far what a placement prints reaches into the allowance; 0 if it crosses the seam itself.
   */
  private static double into(Layout layout, Placement placement, Seam seam) {
    double at = seam.at().mm();
    double allowance = seam.allowance().mm();
    Envelope printed = layout.printed(placement);
    if (layout.tube().runsThrough(at, printed.getMinX(), printed.getMaxX())) {
      return 0;
    }
    return allowance - layout.tube().distanceToLine(at, printed.getMinX(), printed.getMaxX());
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.SEAM, seamPath));
  }
}
