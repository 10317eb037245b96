package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * Copies of a fill's design that are placed otherwise and come near what the fill goes around. What
 * overlaps is told as an overlap.
 *
 * @param arrangement whose copies they are
 * @param count how many come closer than the fill's clearance, where it would have left one out
 * @param nearest the shortest distance
 * @param closest the placement that comes closest
 * @param to the placement that it comes close to
 * @param clear the fill's clearance
 * @param move how much further off the closest one would have to lie; negative if it lies further
 *     off
 */
public record FillerNear(
    String arrangement,
    String fill,
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

  public FillerNear {
    marks = List.copyOf(marks);
  }

  /** How far is looked around, in clearances: enough to see what keeps clear as well. */
  private static final double REACH = 2;

  static List<FillerNear> of(PrintPlan plan, Layout layout) {
    List<FillerNear> near = new ArrayList<>();
    for (Arrangement arrangement : plan.arrangements().values()) {
      if (arrangement instanceof Arrangement.Fill fill) {
        ClothIndex<Placement> around = new ClothIndex<>(layout.tube());
        fill.around().forEach(n -> layout.of(n).forEach(p -> around.add(p.outline(), p)));
        for (Arrangement other : plan.arrangements().values()) {
          if (isFillersKin(other, fill)) {
            find(near, layout, around, fill, other);
          }
        }
      }
    }
    return near;
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
      List<FillerNear> near,
      Layout layout,
      ClothIndex<Placement> around,
      Arrangement.Fill fill,
      Arrangement other) {
    double clear = fill.clear().mm();
    double nearest = Double.POSITIVE_INFINITY;
    Placement closest = null;
    Placement to = null;
    List<Placement> inside = new ArrayList<>();
    for (Placement copy : layout.of(other.name())) {
      boolean within = false;
      for (Placement motif : around.near(copy.outline(), REACH * clear)) {
        double distance = layout.tube().distance(copy.outline(), motif.outline());
        if (!layout.tube().overlaps(copy.outline(), motif.outline())) {
          within |= new Length(distance).below(clear);
          if (distance < nearest) {
            nearest = distance;
            closest = copy;
            to = motif;
          }
        }
      }
      if (within) {
        inside.add(copy);
      }
    }
    if (closest != null) {
      near.add(
          new FillerNear(
              other.name(),
              fill.name(),
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
    return List.of(new Related(Tie.FILL_KEEPING_CLEAR, fillPath));
  }
}
