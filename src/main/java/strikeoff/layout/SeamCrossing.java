package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.units.Length;

/**
 * Placements of one arrangement that print on both sides of a seam.
 *
 * @param seam name of the seam
 * @param at where it runs across the cloth
 * @param padded true if its ridge is levelled
 * @param sewnBefore true if it is sewn before the print day
 * @param crossing ids of the placements across it, rising
 * @param names of the same
 * @param copies the same as people call them together
 * @param move what takes them off all seams; empty if nothing does, or if the ridge is padded
 */
public record SeamCrossing(
    String seam,
    Length at,
    boolean padded,
    boolean sewnBefore,
    String arrangement,
    List<Integer> crossing,
    List<String> names,
    Copies copies,
    Optional<SeamMove> move,
    PlanPath path,
    PlanPath seamPath)
    implements Evidence {

  public SeamCrossing {
    crossing = List.copyOf(crossing);
    names = List.copyOf(names);
  }

  static List<SeamCrossing> of(PrintPlan plan, Layout layout) {
    List<SeamCrossing> crossings = new ArrayList<>();
    for (Seam seam : plan.seams().values()) {
      for (Map.Entry<String, List<Placement>> arranged : layout.arrangements().entrySet()) {
        List<Placement> across =
            arranged.getValue().stream().filter(p -> crosses(layout, p, seam)).toList();
        if (!across.isEmpty()) {
          crossings.add(
              new SeamCrossing(
                  seam.name(),
                  seam.at(),
                  seam.padded(),
                  seam.sewnBefore(),
                  arranged.getKey(),
                  across.stream().map(Placement::id).toList(),
                  across.stream().map(Placement::name).toList(),
                  Copies.of(across),
                  seam.padded()
                      ? Optional.empty()
                      : SeamMove.of(plan, layout, arranged.getKey(), true),
                  plan.arrangements().get(arranged.getKey()).path(),
                  seam.path()));
        }
      }
    }
    return crossings;
  }

  private static boolean crosses(Layout layout, Placement placement, Seam seam) {
    Envelope printed = layout.printed(placement);
    return layout.tube().runsThrough(seam.at().mm(), printed.getMinX(), printed.getMaxX());
  }

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.SEAM, seamPath));
  }

  @Override
  public List<String> marks() {
    return names;
  }

  public int count() {
    return crossing.size();
  }

  /** The move as edits. */
  public List<List<Edit>> moves() {
    return move.map(m -> m.edits(path)).orElseGet(List::of);
  }
}
