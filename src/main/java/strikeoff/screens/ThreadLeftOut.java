package strikeoff.screens;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Assumption;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Range;

/**
 * Meshes of one count whose thread the plan leaves out, and what that leaves open.
 *
 * @param screens with such a mesh, in the plan's order
 * @param takenMicrometres the usual thread of the nearest count, which was taken
 * @param thinnestMicrometres thinnest thread that such a count is sold with
 * @param thickestMicrometres thickest one
 * @param volume theoretical volume, cm³/m²: from the least to the most that a thread between them
 *     makes, with that of the thread that was taken
 * @param openingLeast free width between the thickest threads, in micrometres
 * @param openingMost between the thinnest
 */
public record ThreadLeftOut(
    MeshCount count,
    List<String> screens,
    double takenMicrometres,
    double thinnestMicrometres,
    double thickestMicrometres,
    Range volume,
    double openingLeast,
    double openingMost,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  private static final double MICROMETRES = 1000;

  public ThreadLeftOut {
    screens = List.copyOf(screens);
    related = List.copyOf(related);
  }

  /** One fact for each count; a mesh that the studio's policy describes is stated. */
  static List<ThreadLeftOut> of(PrintPlan plan, Policy policy) {
    Set<PlanPath> assumed =
        plan.assumptions().stream().map(Assumption::path).collect(Collectors.toSet());
    Map<MeshCount, List<Screen>> left = new LinkedHashMap<>();
    for (Screen screen : plan.screens().values()) {
      if (assumed.contains(screen.path().key("thread"))) {
        left.computeIfAbsent(screen.mesh(), count -> new ArrayList<>()).add(screen);
      }
    }
    return left.values().stream().map(screens -> of(screens, policy)).toList();
  }

  private static ThreadLeftOut of(List<Screen> screens, Policy policy) {
    Mesh taken = Mesh.of(screens.get(0));
    double either = policy.screens().threadUnknown().fraction();
    Mesh thin = new Mesh(taken.count(), taken.thread().times(1 / (1 + either)));
    Mesh thick = new Mesh(taken.count(), taken.thread().times(1 + either));
    // Of one count the fullest mesh has threads of a third of the pitch: (1 - s)² s is largest
    // there.
    Length fullest = taken.pitch().times(1.0 / 3);
    List<Range> volumes =
        Stream.of(thin, taken, thick, new Mesh(taken.count(), fullest))
            .filter(mesh -> mesh.thread().compareTo(thin.thread()) >= 0)
            .filter(mesh -> mesh.thread().compareTo(thick.thread()) <= 0)
            .map(Mesh::theoreticalVolume)
            .toList();
    return new ThreadLeftOut(
        taken.count(),
        screens.stream().map(Screen::name).toList(),
        micrometres(taken.thread()),
        micrometres(thin.thread()),
        micrometres(thick.thread()),
        new Range(
            volumes.stream().mapToDouble(Range::low).min().orElseThrow(),
            taken.theoreticalVolume().best(),
            volumes.stream().mapToDouble(Range::high).max().orElseThrow()),
        Math.max(0, micrometres(thick.opening())),
        micrometres(thin.opening()),
        screens.stream().skip(1).map(s -> new Related(Tie.SAME_MESH, s.path())).toList(),
        screens.get(0).path());
  }

  private static double micrometres(Length length) {
    return Math.rint(length.mm() * MICROMETRES);
  }
}
