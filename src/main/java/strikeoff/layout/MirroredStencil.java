package strikeoff.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;

/**
 * A screen that prints one arrangement as drawn and another mirrored; told once for each mirrored
 * arrangement.
 *
 * @param screens that do both
 * @param arrangement printed as drawn
 * @param mirrored printed mirrored
 */
public record MirroredStencil(
    List<String> screens, String arrangement, String mirrored, PlanPath path, List<Related> related)
    implements Evidence {

  public MirroredStencil {
    screens = List.copyOf(screens);
    related = List.copyOf(related);
  }

  static List<MirroredStencil> of(PrintPlan plan) {
    Map<String, Arrangement> asDrawn = new LinkedHashMap<>();
    for (Arrangement arrangement : plan.arrangements().values()) {
      if (!arrangement.mirrored()) {
        screens(plan, arrangement).forEach(s -> asDrawn.putIfAbsent(s, arrangement));
      }
    }
    List<MirroredStencil> found = new ArrayList<>();
    for (Arrangement arrangement : plan.arrangements().values()) {
      if (arrangement.mirrored()) {
        List<String> both =
            screens(plan, arrangement).stream().filter(asDrawn::containsKey).toList();
        if (!both.isEmpty()) {
          Arrangement first = asDrawn.get(both.get(0));
          found.add(
              new MirroredStencil(
                  both,
                  first.name(),
                  arrangement.name(),
                  arrangement.path(),
                  List.of(new Related("printed as drawn", first.path()))));
        }
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
