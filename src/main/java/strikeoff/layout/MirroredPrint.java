package strikeoff.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;

/**
 * An arrangement that is printed mirrored, and what its screens print as drawn.
 *
 * @param screens those of them that do both
 * @param arrangement the first that they print as drawn; empty if they print none so
 * @param mirrored printed mirrored
 */
public record MirroredPrint(
    List<String> screens, String arrangement, String mirrored, PlanPath path, List<Related> related)
    implements Evidence {

  public MirroredPrint {
    screens = List.copyOf(screens);
    related = List.copyOf(related);
  }

  /** True if a screen of it prints something as drawn too. */
  public boolean drawnToo() {
    return !screens.isEmpty();
  }

  static List<MirroredPrint> of(PrintPlan plan) {
    Map<String, Arrangement> asDrawn = new LinkedHashMap<>();
    for (Arrangement arrangement : plan.arrangements().values()) {
      if (!arrangement.mirrored()) {
        screens(plan, arrangement).forEach(s -> asDrawn.putIfAbsent(s, arrangement));
      }
    }
    List<MirroredPrint> found = new ArrayList<>();
    for (Arrangement arrangement : plan.arrangements().values()) {
      if (arrangement.mirrored()) {
        List<String> both =
            screens(plan, arrangement).stream().filter(asDrawn::containsKey).toList();
        Optional<Arrangement> first = both.stream().findFirst().map(asDrawn::get);
        found.add(
            new MirroredPrint(
                both,
                first.map(Arrangement::name).orElse(""),
                arrangement.name(),
                arrangement.path(),
                first.map(a -> new Related(Tie.PRINTED_AS_DRAWN, a.path())).stream().toList()));
      }
    }
    return found;
  }

  private static List<String> screens(PrintPlan plan, Arrangement arrangement) {
    return plan.designs().get(arrangement.design()).separations().stream()
        .map(Design.Separation::screen)
        .distinct()
        .toList();
  }
}
