package strikeoff.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Cloth;
import strikeoff.plan.GivenUp;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.units.Length;

/**
 * The least move along the cloth after which nothing of an arrangement, and of what is set from it,
 * lies across a seam or in its allowance. It was tried: all images stay inside the cloth's
 * allowances, nothing comes to lie on another arrangement, and what the table holds it still holds.
 *
 * @param by how far, in whole millimetres
 * @param toEnd true if it moves to the end of the cloth, false if to its start
 * @param start where a series then starts; empty for other arrangements
 * @param from where a border then begins; empty for other arrangements
 * @param to where it then ends
 */
public record SeamMove(
    Length by, boolean toEnd, Optional<String> start, Optional<String> from, Optional<String> to) {

  /** Nobody moves a row further than this, in mm, to get it off a seam. */
  private static final int FURTHEST = 500;

  /** Rows with more prints for all seams together are not tried. */
  private static final int MOST = 1_000;

  /** As an instruction goes on: {@code by 3 cm towards the end (`start: 38 cm`)}. */
  public String text() {
    String key =
        start
            .map(s -> " (`start: " + s + "`)")
            .or(() -> from.map(f -> " (`from: " + f + ", to: " + to.orElseThrow() + "`)"))
            .orElse("");
    return "by " + by.text() + " towards the " + (toEnd ? "end" : "start") + key;
  }

  /** The least move that keeps frames off unpadded ridges as well; if none does, images alone. */
  static Optional<SeamMove> ofImages(PrintPlan plan, Layout layout, String name) {
    return of(plan, layout, name, true).or(() -> of(plan, layout, name, false));
  }

  /**
   * @param frames whether frames have to keep off ridges that are not padded
   */
  static Optional<SeamMove> of(PrintPlan plan, Layout layout, String name, boolean frames) {
    Arrangement arrangement = plan.arrangements().get(name);
    boolean round = layout.tube().closed() && arrangement instanceof Arrangement.Border;
    if (round || arrangement instanceof Arrangement.Fill) {
      return Optional.empty();
    }
    Set<Integer> moved = new HashSet<>();
    List<Footprint> prints = new ArrayList<>();
    List<Placement> placements = new ArrayList<>();
    for (Placement placement : layout.placements()) {
      boolean follows = placement.anchor().stream().anyMatch(moved::contains);
      if (follows || placement.arrangement().equals(name)) {
        moved.add(placement.id());
        placements.add(placement);
        prints.addAll(layout.footprintsOf(placement.id()));
      }
    }
    if ((long) prints.size() * plan.seams().size() > MOST) {
      return Optional.empty();
    }
    ClothIndex<Placement> still = new ClothIndex<>(layout.tube());
    layout.placements().stream()
        .filter(p -> !moved.contains(p.id()))
        .forEach(p -> still.add(p.outline(), p));
    Envelope own = new Envelope();
    Envelope others = new Envelope();
    for (Footprint print : layout.footprints()) {
      Envelope all = moved.contains(print.placement().id()) ? own : others;
      all.expandToInclude(print.frame().getEnvelopeInternal());
    }
    double table = Math.max(plan.table().length().mm(), reach(own, others, 0));
    for (int by = 1; by <= FURTHEST; by++) {
      GivenUp.ifAsked();
      for (int shift : new int[] {by, -by}) {
        if (prints.stream().allMatch(p -> isClear(plan, layout.tube(), p, shift, frames))
            && reach(own, others, shift) <= table
            && placements.stream().noneMatch(p -> meets(plan, layout, p, still, shift))) {
          return Optional.of(of(arrangement, shift));
        }
      }
    }
    return Optional.empty();
  }

  /** How much of the table all frames take: if that is too much, the cloth has to be moved. */
  private static double reach(Envelope own, Envelope others, int shift) {
    Envelope reach = new Envelope(own);
    reach.translate(shift, 0);
    reach.expandToInclude(others);
    return reach.getWidth();
  }

  private static SeamMove of(Arrangement arrangement, int shift) {
    Length by = new Length(Math.abs(shift));
    boolean toEnd = shift > 0;
    Length on = new Length(shift);
    if (arrangement instanceof Arrangement.Series series) {
      String start = series.start().plus(on).writtenText();
      return new SeamMove(by, toEnd, Optional.of(start), Optional.empty(), Optional.empty());
    }
    if (arrangement instanceof Arrangement.Border border) {
      return new SeamMove(
          by,
          toEnd,
          Optional.empty(),
          Optional.of(border.from().plus(on).writtenText()),
          Optional.of(border.to().plus(on).writtenText()));
    }
    return new SeamMove(by, toEnd, Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static boolean isClear(
      PrintPlan plan, Tube tube, Footprint print, int shift, boolean frames) {
    Envelope image = print.image().getEnvelopeInternal();
    Envelope frame = print.frame().getEnvelopeInternal();
    for (Seam seam : plan.seams().values()) {
      Envelope off = frames && !seam.padded() ? frame : image;
      double free =
          tube.distanceToLine(seam.at().mm(), off.getMinX() + shift, off.getMaxX() + shift);
      if (free < seam.allowance().mm() - 1e-6) {
        return false;
      }
    }
    Cloth cloth = plan.cloth();
    return cloth.closed()
        || image.getMinX() + shift >= cloth.startAllowance().mm() - 1e-6
            && image.getMaxX() + shift <= cloth.length().mm() - cloth.endAllowance().mm() + 1e-6;
  }

  /** Whether it then lies on something that stays where it is, and not on purpose. */
  private static boolean meets(
      PrintPlan plan, Layout layout, Placement placement, ClothIndex<Placement> still, int shift) {
    Geometry there =
        AffineTransformation.translationInstance(shift, 0).transform(placement.outline());
    for (Placement other : still.near(there, 0)) {
      if (!isOver(plan, placement, other)
          && !isOver(plan, other, placement)
          && layout.tube().overlaps(there, other.outline())) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOver(PrintPlan plan, Placement upper, Placement lower) {
    return plan.arrangements().get(upper.arrangement()).over().contains(lower.arrangement())
        || upper.anchor().stream().anyMatch(id -> id == lower.id());
  }
}
