package strikeoff.layout;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.util.AffineTransformation;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.units.Length;

/**
 * The gap between neighbours of a series or border against the frame's overhang beyond its image.
 *
 * @param screen whose frame reaches furthest over the neighbour
 * @param gap free length between the images of two neighbours, along the cloth where they come
 *     nearest; below zero if they overlap
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
    // Seen as the design was before it was turned, so that images and frames lie square.
    AffineTransformation back =
        AffineTransformation.rotationInstance(-Math.toRadians(arrangement.turn().degrees()));
    Coordinate step = back.transform(new Coordinate(1, 0), new Coordinate());
    Coordinate stepBack = new Coordinate(-step.x, -step.y);
    Envelope images = new Envelope();
    Envelope frames = new Envelope();
    double overhang = 0;
    String screen = first.get(0).screen().name();
    for (Footprint footprint : first) {
      images.expandToInclude(back.transform(footprint.printed()).getEnvelopeInternal());
      frames.expandToInclude(back.transform(footprint.frame()).getEnvelopeInternal());
      Envelope image = footprint.printed().getEnvelopeInternal();
      Envelope frame = footprint.frame().getEnvelopeInternal();
      double over = Math.max(frame.getMaxX() - image.getMaxX(), image.getMinX() - frame.getMinX());
      if (over > overhang + Length.TOLERANCE) {
        overhang = over;
        screen = footprint.screen().name();
      }
    }
    // Over the next one, or back over the one before: the design may lie to one side in its frame.
    double reach = Math.max(reach(frames, images, step), reach(frames, images, stepBack));
    return new NeighbourGap(
        arrangement.name(),
        screen,
        pitch,
        rounded(pitch.mm() - reach(images, images, step)),
        new Length(overhang),
        rounded(reach - pitch.mm()),
        (int) Math.max(1, Math.ceil((reach - Length.TOLERANCE) / pitch.mm())),
        plan.run().stream().anyMatch(run -> prints(run, arrangement.name())),
        arrangement.path());
  }

  private static Length rounded(double mm) {
    return new Length(Math.abs(mm) < Length.TOLERANCE ? 0 : mm);
  }

  /** How far a rectangle moved along a step of length 1 still lies on one that stays. */
  private static double reach(Envelope moved, Envelope stays, Coordinate step) {
    double square =
        reach(moved.getMinX(), moved.getMaxX(), stays.getMinX(), stays.getMaxX(), step.x);
    return Math.min(
        square, reach(moved.getMinY(), moved.getMaxY(), stays.getMinY(), stays.getMaxY(), step.y));
  }

  private static double reach(double from, double to, double staysFrom, double staysTo, double by) {
    if (Math.abs(by) < 1e-9) {
      return Double.POSITIVE_INFINITY;
    }
    return by > 0 ? (staysTo - from) / by : (to - staysFrom) / -by;
  }

  private static boolean prints(Step step, String arrangement) {
    return step instanceof PrintStep print && print.arrangements().contains(arrangement);
  }
}
