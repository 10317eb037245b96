package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.Edit;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * Frames of one arrangement that are laid on the ridge of a sewn seam that is not padded, although
 * their images keep clear of it. A seam that images run across is told by {@link SeamCrossing}.
 *
 * @param which placements, as people call them
 * @param onRidge how far the furthest frame reaches on to the ridge or past it: as much further off
 *     it would lie beside it
 * @param move what takes them off it; empty if nothing does
 */
public record RidgeUnderFrame(
    String seam,
    Length at,
    String arrangement,
    String which,
    Length onRidge,
    Optional<SeamMove> move,
    List<String> marks,
    PlanPath path,
    PlanPath seamPath)
    implements Evidence {

  public RidgeUnderFrame {
    marks = List.copyOf(marks);
  }

  /**
   * @param crossings seams that images run across
   */
  static List<RidgeUnderFrame> of(PrintPlan plan, Layout layout, List<SeamCrossing> crossings) {
    List<RidgeUnderFrame> found = new ArrayList<>();
    for (Seam seam : plan.seams().values()) {
      // One cause, one finding: the padding that those ask for helps these as well.
      if (seam.padded() || crossings.stream().anyMatch(c -> c.seam().equals(seam.name()))) {
        continue;
      }
      for (Map.Entry<String, List<Placement>> arranged : layout.arrangements().entrySet()) {
        List<Placement> on = new ArrayList<>();
        double furthest = 0;
        for (Placement placement : arranged.getValue()) {
          double onRidge = onRidge(layout, placement, seam);
          if (onRidge > Length.TOLERANCE && printedOnceSewn(plan, seam, placement)) {
            on.add(placement);
            furthest = Math.max(furthest, onRidge);
          }
        }
        if (!on.isEmpty()) {
          found.add(
              new RidgeUnderFrame(
                  seam.name(),
                  seam.at(),
                  arranged.getKey(),
                  Numbering.places(on),
                  new Length(furthest),
                  SeamMove.of(plan, layout, arranged.getKey(), true),
                  on.stream().map(Placement::name).toList(),
                  plan.arrangements().get(arranged.getKey()).path(),
                  seam.path()));
        }
      }
    }
    return found;
  }

  /** Zero if no frame lies on it, or an image does: that is told otherwise. */
  private static double onRidge(Layout layout, Placement placement, Seam seam) {
    double at = seam.at().mm();
    double ridge = seam.allowance().mm();
    double most = 0;
    for (Footprint footprint : layout.footprintsOf(placement.id())) {
      Envelope image = footprint.image().getEnvelopeInternal();
      Envelope frame = footprint.frame().getEnvelopeInternal();
      Tube tube = layout.tube();
      double clear = tube.distanceToLine(at, image.getMinX(), image.getMaxX());
      if (clear < ridge - Length.TOLERANCE) {
        return 0;
      }
      double free = tube.distanceToLine(at, frame.getMinX(), frame.getMaxX());
      // Past the seam, it lies on the ridge as far as it reaches over it.
      double overhang =
          Math.max(frame.getMaxX() - image.getMaxX(), image.getMinX() - frame.getMinX());
      most = Math.max(most, free > 0 ? ridge - free : ridge + Math.max(0, overhang - clear));
    }
    return most;
  }

  private static boolean printedOnceSewn(PrintPlan plan, Seam seam, Placement placement) {
    boolean sewn = seam.sewnBefore();
    boolean printed = false;
    for (Step step : plan.run()) {
      sewn |= step instanceof Step.Sew sew && sew.seam().equals(seam.name());
      if (step instanceof Step.Print print
          && print.arrangements().contains(placement.arrangement())
          && (print.only().isEmpty() || print.only().contains(placement.number()))) {
        printed = true;
        if (sewn) {
          return true;
        }
      }
    }
    return !printed && seam.sewnBefore();
  }

  /** What a printer can do besides, to end a sentence; may be empty. */
  public String orMove(Measures units) {
    return move.map(m -> ", or move it " + m.text(units)).orElse("");
  }

  /** The move as edits. */
  public List<List<Edit>> moves() {
    return move.map(m -> m.edits(path)).orElseGet(List::of);
  }

  @Override
  public List<Related> related() {
    return List.of(new Related("the seam", seamPath));
  }
}
