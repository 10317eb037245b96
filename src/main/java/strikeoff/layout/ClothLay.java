package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;

/**
 * Where a cloth that is not wider than the table lies across it, and whether all frames then lie on
 * the table. Arrangements that no place of the cloth would help are left out: {@link FrameOnTable}
 * tells of those.
 *
 * @param arrangements those whose frames reach over an edge of the table as the cloth lies
 * @param worst the one whose frames reach over it furthest; the plan's first if none does
 * @param over how far those reach over it; zero if none does
 * @param stated true if the plan says where the cloth lies, false if it is taken to lie in the
 *     middle
 * @param at where its near edge lies, from the table's near edge
 * @param from smallest such distance that keeps the frames of all arrangements on the table
 * @param to largest such distance; below {@code from} if no one place keeps all of them on it
 * @param proposed a place for the near edge that does, as near to the present one as goes with
 *     whole steps; of no meaning if there is none
 * @param tableWidth width of the table
 * @param widthNeeded table width that has a place for all
 * @param needsFar the arrangement that needs the cloth furthest from the near edge
 * @param needsNear the one that needs it nearest
 */
public record ClothLay(
    List<String> arrangements,
    String worst,
    Length over,
    boolean stated,
    Length at,
    Length from,
    Length to,
    Length proposed,
    Length tableWidth,
    Length widthNeeded,
    String needsFar,
    String needsNear,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public ClothLay {
    arrangements = List.copyOf(arrangements);
    related = List.copyOf(related);
  }

  static Optional<ClothLay> of(PrintPlan plan, List<FrameOnTable> frames) {
    List<FrameOnTable> fits = frames.stream().filter(f -> f.lacks().mm() <= 0).toList();
    if (fits.isEmpty()) {
      return Optional.empty();
    }
    Length table = plan.table().width();
    double at = plan.table().nearEdgeOf(plan.cloth()).mm();
    FrameOnTable far = fits.get(0);
    FrameOnTable near = far;
    FrameOnTable worst = far;
    List<String> over = new ArrayList<>();
    for (FrameOnTable frame : fits) {
      far = frame.reachesFrom().compareTo(far.reachesFrom()) < 0 ? frame : far;
      near = frame.reachesTo().compareTo(near.reachesTo()) > 0 ? frame : near;
      // Of two alike the plan's first, however its lengths are written.
      worst = over(frame, at, table) > over(worst, at, table) + Length.TOLERANCE ? frame : worst;
      if (over(frame, at, table) > Length.TOLERANCE) {
        over.add(frame.arrangement());
      }
    }
    // It may hang over one side: only the frames have to lie on the table.
    double from = -far.reachesFrom().mm();
    double to = table.mm() - near.reachesTo().mm();
    double most = over(worst, at, table);
    return Optional.of(
        new ClothLay(
            over,
            worst.arrangement(),
            new Length(most > Length.TOLERANCE ? most : 0),
            plan.table().clothAt().isPresent(),
            new Length(at),
            new Length(from),
            new Length(to),
            new Length(proposed(from, to, at, Length.measuredTo(plan.measures()).mm())),
            table,
            table.plus(new Length(Math.max(0, from - to))),
            far.arrangement(),
            near.arrangement(),
            worst.path(),
            List.of(new Related(Tie.TABLE, plan.table().path()))));
  }

  private static double over(FrameOnTable frame, double at, Length table) {
    return Math.max(-frame.reachesFrom().mm() - at, frame.reachesTo().mm() + at - table.mm());
  }

  private static double proposed(double from, double to, double at, double step) {
    double nearest = Math.max(from, Math.min(to, at));
    double steps = nearest / step;
    double rounded = (nearest == from ? Math.ceil(steps) : Math.floor(steps)) * step;
    return rounded >= from && rounded <= to ? rounded : nearest;
  }

  /** True if one place of the cloth keeps all frames on the table. */
  public boolean onePlace() {
    return from.mm() <= to.mm() + Length.TOLERANCE;
  }

  /** What the table lacks for one place that keeps all frames on it; zero if it has one. */
  public Length missing() {
    return widthNeeded.minus(tableWidth);
  }
}
