package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.GivenUp;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * Placements that are said to be printed over others.
 *
 * @param arrangement whose placements they are
 * @param base what they are to lie over
 * @param lands true if one of them at least lies on one of those
 * @param closest the copy that comes closest to it
 * @param to the copy that it comes closest to
 * @param apart how far those two lie apart
 * @param path where the plan says what they go over
 */
public record LaidOver(
    String arrangement,
    String base,
    boolean lands,
    String closest,
    String to,
    Length apart,
    List<String> marks,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  private static final double FIRST_REACH = 50;

  public LaidOver {
    marks = List.copyOf(marks);
    related = List.copyOf(related);
  }

  static List<LaidOver> of(PrintPlan plan, Layout layout) {
    List<LaidOver> all = new ArrayList<>();
    for (Arrangement upper : plan.arrangements().values()) {
      for (String name : upper.over()) {
        Arrangement base = plan.arrangements().get(name);
        if (base != null && !layout.of(name).isEmpty() && !layout.of(upper.name()).isEmpty()) {
          find(all, layout, upper, base);
        }
      }
    }
    return all;
  }

  private static void find(List<LaidOver> all, Layout layout, Arrangement upper, Arrangement base) {
    ClothIndex<Placement> bases = new ClothIndex<>(layout.tube());
    layout.of(base.name()).forEach(p -> bases.add(p.outline(), p));
    List<Placement> copies = layout.of(upper.name());
    // The reach grows until something is as near as that, so that few pairs are measured.
    for (double reach = 0; ; reach = Math.max(FIRST_REACH, 2 * reach)) {
      Placement closest = null;
      Placement to = null;
      double apart = Double.POSITIVE_INFINITY;
      for (Placement copy : copies) {
        GivenUp.ifAsked();
        for (Placement other : bases.near(copy.outline(), reach)) {
          if (layout.tube().overlaps(copy.outline(), other.outline())) {
            all.add(laid(upper, base, true, copy, other, 0, copies));
            return;
          }
          double distance = layout.tube().distance(copy.outline(), other.outline());
          if (distance < apart) {
            apart = distance;
            closest = copy;
            to = other;
          }
        }
      }
      if (closest != null && apart <= reach) {
        all.add(laid(upper, base, false, closest, to, apart, copies));
        return;
      }
    }
  }

  private static LaidOver laid(
      Arrangement upper,
      Arrangement base,
      boolean lands,
      Placement closest,
      Placement to,
      double apart,
      List<Placement> copies) {
    return new LaidOver(
        upper.name(),
        base.name(),
        lands,
        closest.name(),
        to.name(),
        new Length(apart),
        copies.stream().map(Placement::name).toList(),
        List.of(new Related(Tie.TO_LIE_OVER, base.path())),
        upper.path().key("over"));
  }
}
