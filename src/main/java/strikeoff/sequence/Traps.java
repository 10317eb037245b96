package strikeoff.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import strikeoff.evidence.Evidence;
import strikeoff.layout.Layout;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/** Traps of placed designs. */
final class Traps {

  private Traps() {}

  static List<Evidence> of(PrintPlan plan, Layout layout, Policy policy) {
    boolean railed = plan.table().railed();
    Length tolerance =
        railed ? policy.order().registrationRailed() : policy.order().registrationByEye();
    List<Evidence> facts = new ArrayList<>();
    for (Design design : plan.designs().values()) {
      List<String> placements = layout.placed(design);
      List<Separation> trapped =
          design.separations().stream().filter(s -> s.trap().isPresent()).toList();
      if (!placements.isEmpty()) {
        List<Separation> unstated = unstated(design);
        facts.add(
            new Adjoining(
                design.name(),
                unstated.size(),
                unstated.stream().map(Separation::paste).distinct().toList(),
                railed,
                tolerance,
                placements,
                unstated.isEmpty() ? design.path() : unstated.get(1).path()));
      }
      if (!placements.isEmpty() && design.separations().size() > 1 && !trapped.isEmpty()) {
        Separation narrowest =
            trapped.stream().min(Comparator.comparing(s -> s.trap().get())).orElseThrow();
        Length trap = narrowest.trap().get();
        facts.add(
            new TrapWidth(
                design.name(),
                trapped.stream()
                    .filter(t -> t.trap().get().compareTo(trap) == 0)
                    .map(Separation::paste)
                    .distinct()
                    .toList(),
                trap,
                railed,
                tolerance,
                placements,
                narrowest.path()));
      }
    }
    return facts;
  }

  /** Those that can adjoin another of them and have no trap, neither they nor the other one. */
  private static List<Separation> unstated(Design design) {
    List<Separation> open = design.separations().stream().filter(s -> s.trap().isEmpty()).toList();
    // Two outlines that meet are cut to.
    return open.stream()
        .filter(
            one ->
                open.stream().anyMatch(other -> !(one.key() && other.key()) && adjoins(one, other)))
        .toList();
  }

  private static boolean adjoins(Separation one, Separation other) {
    return !one.paste().equals(other.paste())
        && SharedAreas.common(one, other) > 0
        && SharedAreas.certain(one, List.of(other)) == 0
        && SharedAreas.certain(other, List.of(one)) == 0;
  }
}
