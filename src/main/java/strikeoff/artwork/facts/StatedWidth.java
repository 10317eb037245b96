package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Artwork;
import strikeoff.plan.Artwork.Fine;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.Joint;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * A width that a plan states beside a film which tells it, and which counts.
 *
 * @param file the film's name, as the plan writes it
 * @param key under which the plan states it
 * @param stated by the plan
 * @param measured by the film; empty if it has none so narrow
 * @param off how far the plan's figure is from the film's, beyond a point of the film, as a share
 *     of the film's; all of it where the film has none
 */
public record StatedWidth(
    String design,
    int separation,
    String file,
    String key,
    Length stated,
    Optional<Length> measured,
    Share off,
    PlanPath path)
    implements Evidence {

  /**
   * Of a separation's finest line and of its narrowest lap, as far as both say them. Where the
   * finest line is that of a register mark, the film says nothing of what the plan means.
   */
  static List<StatedWidth> of(
      Design design,
      Separation separation,
      Artwork artwork,
      List<MarksOnFilms> marks,
      Policy policy) {
    List<StatedWidth> all = new ArrayList<>();
    Optional<Fine> fine = policy.fine(artwork);
    if (fine.isPresent()
        && separation.detail().isPresent()
        && marks.stream().noneMatch(m -> m.areAt(separation.path(), fine.get().line()))) {
      all.add(
          of(
              design,
              separation,
              "detail",
              separation.detail().get(),
              fine.get().line().map(Finest::width),
              fine.get().point()));
    }
    List<Joint> joints =
        design.joints().stream()
            .filter(j -> j.one() == separation.number() || j.other() == separation.number())
            .toList();
    if (!joints.isEmpty() && separation.trap().isPresent()) {
      all.add(
          of(
              design,
              separation,
              "trap",
              separation.trap().get(),
              joints.stream()
                  .flatMap(joint -> joint.lap().stream())
                  .map(Finest::width)
                  .min(Comparator.naturalOrder()),
              joints.get(0).point()));
    }
    return all;
  }

  private static StatedWidth of(
      Design design,
      Separation separation,
      String key,
      Length stated,
      Optional<Length> measured,
      Length point) {
    double off =
        measured
            .map(m -> Math.max(0, Math.abs(stated.mm() - m.mm()) - point.mm()) / m.mm())
            .orElse(1.0);
    return new StatedWidth(
        design.name(),
        separation.number(),
        separation.artwork().orElseThrow().file(),
        key,
        stated,
        measured,
        new Share(off),
        separation.path().key(key));
  }
}
