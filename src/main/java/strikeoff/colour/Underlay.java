package strikeoff.colour;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import strikeoff.document.Bounds;
import strikeoff.layout.ClothIndex;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.Design;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;

/**
 * What a paste lies on, and how far it stands out from that. On its own motif it lies on every
 * separation listed before it that it may share area with: the stencil decides where. On another
 * motif it lies if what that one prints lies all round it and is printed first, as what it is
 * anchored to is. A paste that hides nothing is helped by covering ones only, such as a white
 * printed and dried first.
 */
final class Underlay {

  private final Map<String, Design> designs;
  private final Layout layout;
  private final Palette palette;
  private final ClothIndex<Footprint> index;
  private final Map<String, Integer> firstPrinted = new LinkedHashMap<>();
  private long left;

  Underlay(PrintPlan plan, Layout layout, Palette palette, Policy policy) {
    this.designs = plan.designs();
    this.layout = layout;
    this.palette = palette;
    this.left = Bounds.PAIRS;
    index = new ClothIndex<>(layout.tube());
    layout.footprints().forEach(f -> index.add(f.printed(), f));
    for (Step step : plan.run()) {
      if (step instanceof PrintStep print) {
        print.arrangements().forEach(name -> firstPrinted.putIfAbsent(name, step.number()));
      }
    }
  }

  /**
   * How a paste stands out from what it lies on.
   *
   * @param over the pastes under it
   * @param difference CIEDE2000 to that of them which it stands out from most, where it does so
   *     least; 0 if it lies on the bare ground somewhere
   */
  record Standing(List<String> over, double difference) {
    static final Standing NONE = new Standing(List.of(), 0);
  }

  Standing of(Paste paste) {
    Map<String, Double> differences = new LinkedHashMap<>();
    double least = Double.POSITIVE_INFINITY;
    for (Footprint footprint : layout.footprints()) {
      if (footprint.paste().name().equals(paste.name())) {
        double most = 0;
        for (Paste under : under(footprint)) {
          double difference =
              differences.computeIfAbsent(under.name(), name -> difference(under, paste));
          most = Math.max(most, difference);
        }
        least = Math.min(least, most);
        if (least == 0) {
          return Standing.NONE;
        }
      }
    }
    return new Standing(List.copyOf(differences.keySet()), least);
  }

  private double difference(Paste under, Paste paste) {
    Lab below = Lab.of(palette.onGround(palette.wet(under)));
    boolean hidesNothing = paste.transparent() && !paste.translucent();
    if (hidesNothing && under.transparent()
        || palette.isTooLight(paste, Lab.of(paste.colour()), below)) {
      return 0;
    }
    return Lab.of(palette.onGround(palette.wet(under), palette.wet(paste))).difference(below);
  }

  private Set<Paste> under(Footprint upper) {
    Set<Paste> pastes = new LinkedHashSet<>();
    for (Footprint lower : index.near(upper.printed(), 0)) {
      if (left-- <= 0) {
        break;
      }
      if (!lower.paste().name().equals(upper.paste().name()) && liesOn(upper, lower)) {
        pastes.add(lower.paste());
      }
    }
    return pastes;
  }

  private boolean liesOn(Footprint upper, Footprint lower) {
    if (lower.placement().id() == upper.placement().id()) {
      return lower.separation().number() < upper.separation().number()
          && SharedArea.of(
                  designs.get(lower.placement().design()), lower.separation(), upper.separation())
              .isPossible();
    }
    return (isAnchorOf(upper.placement(), lower.placement()) || isPrintedFirst(lower, upper))
        && isHeld(upper.printed(), lower.printed());
  }

  private boolean isHeld(Geometry upper, Geometry lower) {
    return layout.tube().overlap(lower, upper).squareCm() * 100 >= upper.getArea() * (1 - 1e-9);
  }

  private boolean isAnchorOf(Placement placement, Placement wanted) {
    OptionalInt at = placement.anchor();
    while (at.isPresent() && at.getAsInt() != wanted.id()) {
      at = layout.placements().get(at.getAsInt()).anchor();
    }
    return at.isPresent();
  }

  private boolean isPrintedFirst(Footprint lower, Footprint upper) {
    Integer first = firstPrinted.get(lower.placement().arrangement());
    Integer then = firstPrinted.get(upper.placement().arrangement());
    return first != null && then != null && first < then;
  }
}
