package strikeoff.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import strikeoff.document.Edit;
import strikeoff.document.GivenUp;
import strikeoff.document.PlanPath;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Cloth;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * The least move along the cloth after which nothing of an arrangement, and of what is set from it,
 * lies across a seam or in its allowance. It was tried: all images stay inside the cloth's
 * allowances, nothing comes to lie on another arrangement, and what the table holds it still holds.
 *
 * @param by how far, in whole millimetres
 * @param toEnd true if it moves to the end of the cloth, false if to its start
 * @param keys what to write into the arrangement for it, in order: of a series its {@code start},
 *     of a border its {@code from} and {@code to}; empty for other arrangements
 */
public record SeamMove(Length by, boolean toEnd, Map<String, String> keys) {

  /** Nobody moves a row further than this, in mm, to get it off a seam. */
  private static final int FURTHEST = 500;

  /** Rows with more prints for all seams together are not tried. */
  private static final int MOST = 1_000;

  public SeamMove {
    keys = Collections.unmodifiableMap(new LinkedHashMap<>(keys));
  }

  /**
   * The same as edits, one way or none.
   *
   * @param path of the arrangement
   */
  List<List<Edit>> edits(PlanPath path) {
    List<Edit> edits = new ArrayList<>();
    keys.forEach((key, value) -> edits.add(new Edit.Write(path.key(key), value)));
    return edits.isEmpty() ? List.of() : List.of(edits);
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
    List<Reach> prints = new ArrayList<>();
    List<Placement> placements = new ArrayList<>();
    for (Placement placement : layout.placements()) {
      boolean follows = placement.anchor().stream().anyMatch(moved::contains);
      if (follows || placement.arrangement().equals(name)) {
        moved.add(placement.id());
        placements.add(placement);
        layout.footprintsOf(placement.id()).forEach(print -> prints.add(Reach.of(print)));
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
    double step = Length.measuredTo(plan.measures()).mm();
    for (int steps = 1; steps * step <= FURTHEST; steps++) {
      GivenUp.ifAsked();
      for (double shift : new double[] {steps * step, -steps * step}) {
        if (prints.stream().allMatch(p -> isClear(plan, layout.tube(), p, shift, frames))
            && reach(own, others, shift) <= table
            && placements.stream().noneMatch(p -> meets(plan, layout, p, still, shift))) {
          return Optional.of(of(arrangement, shift, plan.measures()));
        }
      }
    }
    return Optional.empty();
  }

  /** How much of the table all frames take: if that is too much, the cloth has to be moved. */
  private static double reach(Envelope own, Envelope others, double shift) {
    Envelope reach = new Envelope(own);
    reach.translate(shift, 0);
    reach.expandToInclude(others);
    return reach.getWidth();
  }

  private static SeamMove of(Arrangement arrangement, double shift, Measures units) {
    Length on = new Length(shift);
    Map<String, String> keys = new LinkedHashMap<>();
    if (arrangement instanceof Arrangement.Series series) {
      keys.put("start", series.start().plus(on).writtenText(units));
    } else if (arrangement instanceof Arrangement.Border border) {
      keys.put("from", border.from().plus(on).writtenText(units));
      keys.put("to", border.to().plus(on).writtenText(units));
    }
    return new SeamMove(new Length(Math.abs(shift)), shift > 0, keys);
  }

  private static boolean isClear(
      PrintPlan plan, Tube tube, Reach print, double shift, boolean frames) {
    for (Seam seam : plan.seams().values()) {
      Envelope off = frames && !seam.padded() ? print.frame : print.printed;
      double free =
          tube.distanceToLine(seam.at().mm(), off.getMinX() + shift, off.getMaxX() + shift);
      if (free < seam.allowance().mm() - 1e-6) {
        return false;
      }
    }
    Cloth cloth = plan.cloth();
    return cloth.closed()
        || print.printed.getMinX() + shift >= cloth.startAllowance().mm() - 1e-6
            && print.printed.getMaxX() + shift
                <= cloth.length().mm() - cloth.endAllowance().mm() + 1e-6;
  }

  /** How far one print and its frame reach. */
  private record Reach(Envelope printed, Envelope frame) {

    static Reach of(Footprint print) {
      return new Reach(print.printed().getEnvelopeInternal(), print.frame().getEnvelopeInternal());
    }
  }

  /** Whether it then lies on something that stays where it is, and not on purpose. */
  private static boolean meets(
      PrintPlan plan,
      Layout layout,
      Placement placement,
      ClothIndex<Placement> still,
      double shift) {
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
