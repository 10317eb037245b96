package strikeoff.layout;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.units.Length;

/**
 * The gap between neighbours of a series or border against the frame's overhang beyond its image.
 *
 * @param screen whose frame reaches furthest over the neighbour
 * @param gap free length between the images of two neighbours
 * @param overhang how far that frame reaches beyond its own image along the cloth
 * @param covered how much of the neighbour's image lies under the frame; zero or less if it stays
 *     free
 * @param everyNth the least n for which printing every n-th keeps the frame off wet neighbours; 1
 *     if none is covered
 * @param printed true if a step of the run prints the arrangement
 */
public record NeighbourGap(
    String arrangement,
    String screen,
    Length pitch,
    Length gap,
    Length overhang,
    Length covered,
    int everyNth,
    boolean printed,
    PlanPath path)
    implements Evidence {

  static Optional<NeighbourGap> of(PrintPlan plan, Layout layout, Arrangement arrangement) {
    List<Placement> own = layout.of(arrangement.name());
    if (own.size() < 2 || layout.footprintsOf(own.get(0).id()).isEmpty()) {
      return Optional.empty();
    }
    if (arrangement instanceof Arrangement.Series series) {
      return Optional.of(of(plan, layout.footprintsOf(own.get(0).id()), series.pitch(), series));
    } else if (arrangement instanceof Arrangement.Border border) {
      return Optional.of(of(plan, layout.footprintsOf(own.get(0).id()), border.repeat(), border));
    }
    return Optional.empty();
  }

  private static NeighbourGap of(
      PrintPlan plan, List<Footprint> first, Length pitch, Arrangement arrangement) {
    double imagesFrom = Double.POSITIVE_INFINITY;
    double imagesTo = Double.NEGATIVE_INFINITY;
    double framesFrom = Double.POSITIVE_INFINITY;
    double framesTo = Double.NEGATIVE_INFINITY;
    double overhang = 0;
    String screen = first.get(0).screen().name();
    for (Footprint footprint : first) {
      Envelope image = footprint.image().getEnvelopeInternal();
      Envelope frame = footprint.frame().getEnvelopeInternal();
      imagesFrom = Math.min(imagesFrom, image.getMinX());
      imagesTo = Math.max(imagesTo, image.getMaxX());
      framesFrom = Math.min(framesFrom, frame.getMinX());
      framesTo = Math.max(framesTo, frame.getMaxX());
      double over = Math.max(frame.getMaxX() - image.getMaxX(), image.getMinX() - frame.getMinX());
      if (over > overhang + Tube.ROUNDING) {
        overhang = over;
        screen = footprint.screen().name();
      }
    }
    // Over the next one, or back over the one before: the design may lie to one side in its frame.
    double reach = Math.max(framesTo - imagesFrom, imagesTo - framesFrom);
    return new NeighbourGap(
        arrangement.name(),
        screen,
        pitch,
        new Length(pitch.mm() - (imagesTo - imagesFrom)),
        new Length(overhang),
        new Length(reach - pitch.mm()),
        (int) Math.max(1, Math.ceil((reach - Tube.ROUNDING) / pitch.mm())),
        plan.run().stream().anyMatch(step -> prints(step, arrangement.name())),
        arrangement.path());
  }

  /** What to print first, in words. */
  public String everyText() {
    return switch (everyNth) {
      case 1 -> "every one";
      case 2 -> "every other one";
      case 3 -> "every third one";
      default -> "every " + everyNth + "th one";
    };
  }

  private static boolean prints(Step step, String arrangement) {
    return step instanceof Step.Print print && print.arrangements().contains(arrangement);
  }
}
