package strikeoff.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.evidence.Evidence;
import strikeoff.layout.Layout;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Joint;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/** Traps of placed designs. */
final class Traps {

  private Traps() {}

  static List<Evidence> of(PrintPlan plan, Layout layout, Policy policy) {
    boolean railed = plan.table().railed();
    Length tolerance = policy.registration(railed);
    List<Evidence> facts = new ArrayList<>();
    for (Design design : plan.designs().values()) {
      List<String> placements = layout.placed(design);
      List<Separation> trapped =
          design.separations().stream().filter(s -> s.trap().isPresent()).toList();
      if (!placements.isEmpty()) {
        List<Separation> unstated =
            unstated(design, new FilmsBeside(design, tolerance, policy.artwork().bareSeen()));
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
      Optional<TrapWidth> measured = measured(design, railed, tolerance, placements);
      if (!placements.isEmpty() && measured.isPresent()) {
        facts.add(measured.get());
      } else if (!placements.isEmpty()
          && design.joints().isEmpty()
          && design.separations().size() > 1
          && !trapped.isEmpty()) {
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
                Optional.empty(),
                new Length(0),
                railed,
                tolerance,
                placements,
                narrowest.path()));
      }
    }
    return facts;
  }

  /** The narrowest lap of two films; of an outline over a colour's edge is told by itself. */
  private static Optional<TrapWidth> measured(
      Design design, boolean railed, Length tolerance, List<String> placements) {
    return design.joints().stream()
        .filter(joint -> joint.lap().isPresent() && !outlines(design, joint))
        .min(Comparator.comparing(joint -> joint.lap().get().width()))
        .map(
            joint -> {
              Separation one = design.separation(joint.one());
              Separation other = design.separation(joint.other());
              return new TrapWidth(
                  design.name(),
                  List.of(one.paste(), other.paste()),
                  joint.lap().get().width(),
                  joint.lap(),
                  joint.point(),
                  railed,
                  tolerance,
                  placements,
                  other.path().key("artwork"));
            });
  }

  private static boolean outlines(Design design, Joint joint) {
    return design.separation(joint.one()).key() != design.separation(joint.other()).key();
  }

  /** Those that can adjoin another of them and have no trap, neither they nor the other one. */
  private static List<Separation> unstated(Design design, FilmsBeside films) {
    List<Separation> open = design.separations().stream().filter(s -> s.trap().isEmpty()).toList();
    // Two outlines that meet are cut to.
    return open.stream()
        .filter(
            one ->
                open.stream()
                    .anyMatch(
                        other ->
                            !(one.key() && other.key())
                                && design.joint(one, other).isEmpty()
                                && adjoins(design, one, other)
                                && films.canAdjoin(one, other)))
        .toList();
  }

  private static boolean adjoins(Design design, Separation one, Separation other) {
    return !one.paste().equals(other.paste())
        && SharedAreas.common(one, other) > 0
        && SharedAreas.certain(design, one, List.of(other)) == 0
        && SharedAreas.certain(design, other, List.of(one)) == 0;
  }
}
