package strikeoff.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Share;

/**
 * An arrangement that is printed mirrored, and what its screens print as drawn.
 *
 * @param screens those of them that do both
 * @param arrangement the first that they print as drawn; empty if they print none so
 * @param mirrored printed mirrored
 * @param apart how much of a film of those screens and its mirror image is printed in one of them
 *     alone, at the most; all where there is no film to tell
 */
public record MirroredPrint(
    List<String> screens,
    String arrangement,
    String mirrored,
    Share apart,
    PlanPath path,
    List<Related> related)
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
                apart(plan, arrangement, both),
                arrangement.path(),
                first.map(a -> new Related(Tie.PRINTED_AS_DRAWN, a.path())).stream().toList()));
      }
    }
    return found;
  }

  private static Share apart(PrintPlan plan, Arrangement arrangement, List<String> screens) {
    return plan.designs().get(arrangement.design()).separations().stream()
        .filter(separation -> screens.contains(separation.screen()))
        .map(separation -> separation.artwork().map(Artwork::mirrorApart).orElse(new Share(1)))
        .max(Comparator.naturalOrder())
        .orElse(new Share(1));
  }

  private static List<String> screens(PrintPlan plan, Arrangement arrangement) {
    return plan.designs().get(arrangement.design()).separations().stream()
        .map(Design.Separation::screen)
        .distinct()
        .toList();
  }
}
