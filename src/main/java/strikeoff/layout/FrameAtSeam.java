package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.units.Length;

/**
 * Frames of one arrangement that are laid by a sewn seam while what they print keeps clear of its
 * ridge. What runs across it are a {@link SeamCrossing}.
 *
 * @param padded true if the ridge is levelled
 * @param copies placements whose frames lie on the ridge
 * @param onRidge how far the furthest frame reaches on to the ridge or past it: as much further off
 *     it would lie beside it; below zero if all lie off it
 * @param move what takes them off it; empty if nothing does, or if nothing has to
 */
public record FrameAtSeam(
    String seam,
    Length at,
    boolean padded,
    String arrangement,
    Copies copies,
    Length onRidge,
    Optional<SeamMove> move,
    List<String> marks,
    PlanPath path,
    PlanPath seamPath)
    implements Evidence {

  public FrameAtSeam {
    marks = List.copyOf(marks);
  }

  static List<FrameAtSeam> of(PrintPlan plan, Layout layout) {
    List<FrameAtSeam> found = new ArrayList<>();
    for (Seam seam : plan.seams().values()) {
      for (Map.Entry<String, List<Placement>> arranged : layout.arrangements().entrySet()) {
        List<Placement> on = new ArrayList<>();
        double furthest = Double.NEGATIVE_INFINITY;
        for (Placement placement : arranged.getValue()) {
          OptionalDouble reach = onRidge(layout, placement, seam);
          if (reach.isPresent() && printedOnceSewn(plan, seam, placement)) {
            Length onRidge = new Length(reach.getAsDouble());
            furthest = Math.max(furthest, onRidge.mm());
            if (onRidge.above(0)) {
              on.add(placement);
            }
          }
        }
        if (Double.isFinite(furthest)) {
          found.add(
              new FrameAtSeam(
                  seam.name(),
                  seam.at(),
                  seam.padded(),
                  arranged.getKey(),
                  Copies.of(on),
                  new Length(furthest),
                  on.isEmpty() || seam.padded()
                      ? Optional.empty()
                      : SeamMove.of(plan, layout, arranged.getKey(), true),
                  on.stream().map(Placement::name).toList(),
                  plan.arrangements().get(arranged.getKey()).path(),
                  seam.path()));
        }
      }
    }
    return found;
  }

  /** How far a frame reaches on to it, below zero if it keeps off; empty if what it prints does. */
  private static OptionalDouble onRidge(Layout layout, Placement placement, Seam seam) {
    double at = seam.at().mm();
    double ridge = seam.allowance().mm();
    Tube tube = layout.tube();
    Envelope printed = layout.printed(placement);
    double clear = tube.distanceToLine(at, printed.getMinX(), printed.getMaxX());
    if (clear < ridge - Length.TOLERANCE) {
      return OptionalDouble.empty();
    }
    double most = Double.NEGATIVE_INFINITY;
    for (Footprint footprint : layout.footprintsOf(placement.id())) {
      Envelope frame = footprint.frame().getEnvelopeInternal();
      double free = tube.distanceToLine(at, frame.getMinX(), frame.getMaxX());
      // Past the seam, it lies on the ridge as far as it reaches over it.
      double overhang =
          Math.max(frame.getMaxX() - printed.getMaxX(), printed.getMinX() - frame.getMinX());
      most = Math.max(most, free > 0 ? ridge - free : ridge + Math.max(0, overhang - clear));
    }
    return OptionalDouble.of(most);
  }

  private static boolean printedOnceSewn(PrintPlan plan, Seam seam, Placement placement) {
    boolean sewn = seam.sewnBefore();
    boolean printed = false;
    for (Step step : plan.run()) {
      sewn |= step instanceof Step.Sew sew && sew.seam().equals(seam.name());
      if (step instanceof PrintStep print
          && print.prints(placement.arrangement(), placement.number())) {
        printed = true;
        if (sewn) {
          return true;
        }
      }
    }
    return !printed && seam.sewnBefore();
  }

  /** The move as edits. */
  public List<List<Edit>> moves() {
    return move.map(m -> m.edits(path)).orElseGet(List::of);
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.SEAM, seamPath));
  }
}
