package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * Copies of a fill's design that are placed otherwise, closer to what the fill goes around than its
 * clearance: where the fill would have left one out.
 *
 * @param arrangement whose copies come too close
 * @param placements those copies, as people call them
 * @param count how many
 * @param nearest the shortest distance among them
 * @param closest the placement that comes closest
 * @param to the placement that it comes close to
 * @param clear the fill's clearance
 * @param move how much further off the closest one would have to lie
 */
public record ClearanceBreach(
    String arrangement,
    String fill,
    String placements,
    int count,
    Length nearest,
    String closest,
    String to,
    Length clear,
    Length move,
    List<String> marks,
    PlanPath path,
    PlanPath fillPath)
    implements Evidence {

  public ClearanceBreach {
    marks = List.copyOf(marks);
  }

  static List<ClearanceBreach> of(PrintPlan plan, Layout layout) {
    List<ClearanceBreach> breaches = new ArrayList<>();
    for (Arrangement arrangement : plan.arrangements().values()) {
      if (arrangement instanceof Arrangement.Fill fill) {
        ClothIndex<Placement> around = new ClothIndex<>(layout.tube());
        fill.around().forEach(n -> layout.of(n).forEach(p -> around.add(p.outline(), p)));
        for (Arrangement other : plan.arrangements().values()) {
          if (isFillersKin(other, fill)) {
            find(breaches, layout, around, fill, other);
          }
        }
      }
    }
    return breaches;
  }

  /** The same design, not a fill of its own, not itself gone around, not set from what is. */
  private static boolean isFillersKin(Arrangement other, Arrangement.Fill fill) {
    return other.design().equals(fill.design())
        && !(other instanceof Arrangement.Fill)
        && !fill.around().contains(other.name())
        && !(other instanceof Arrangement.Anchored anchored
            && fill.around().contains(anchored.anchor()));
  }

  private static void find(
      List<ClearanceBreach> breaches,
      Layout layout,
      ClothIndex<Placement> around,
      Arrangement.Fill fill,
      Arrangement other) {
    double clear = fill.clear().mm();
    double nearest = clear - Length.TOLERANCE;
    Placement closest = null;
    Placement to = null;
    List<Placement> inside = new ArrayList<>();
    for (Placement copy : layout.of(other.name())) {
      boolean tooClose = false;
      for (Placement motif : around.near(copy.outline(), clear)) {
        double distance = layout.tube().distance(copy.outline(), motif.outline());
        // What overlaps is told as an overlap.
        if (distance < clear - Length.TOLERANCE
            && !layout.tube().overlaps(copy.outline(), motif.outline())) {
          tooClose = true;
          if (distance < nearest) {
            nearest = distance;
            closest = copy;
            to = motif;
          }
        }
      }
      if (tooClose) {
        inside.add(copy);
      }
    }
    if (closest != null) {
      breaches.add(
          new ClearanceBreach(
              other.name(),
              fill.name(),
              Numbering.places(inside),
              inside.size(),
              new Length(nearest),
              closest.name(),
              to.name(),
              fill.clear(),
              new Length(clear - nearest),
              inside.stream().map(Placement::name).toList(),
              other.path(),
              fill.path()));
    }
  }

  @Override
  public List<Related> related() {
    return List.of(new Related("the fill that keeps clear", fillPath));
  }
}
