package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PlacedCells;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Limits;
import strikeoff.units.Area;
import strikeoff.units.Share;

/**
 * An opaque colour and what is printed over it later, by the films' cells of about a millimetre.
 * One that lies under others nearly all over is an underlay, as a white is under colours that would
 * be lost on dark cloth.
 *
 * @param paste of it
 * @param over pastes of the later ones that lie on it somewhere
 * @param hiding those of them that are opaque
 * @param covered share of what it prints on which any of them prints
 * @param hidden the same of opaque ones
 * @param beside the rest of it, on which none does
 * @param besideShare of what it prints
 * @param underlay true if, by the policy, it is one
 * @param past true if it is one, and stands out past what lies on it in a rim: no part of it lies
 *     so far away that it may be drawn to be seen
 * @param wasted true if it is one that opaque colours hide
 */
public record FilmUnderOthers(
    String design,
    String paste,
    List<String> over,
    List<String> hiding,
    Share covered,
    Share hidden,
    Area beside,
    Share besideShare,
    boolean underlay,
    boolean past,
    boolean wasted,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public FilmUnderOthers {
    over = List.copyOf(over);
    hiding = List.copyOf(hiding);
    related = List.copyOf(related);
  }

  /** Empty of an outline, of a transparent colour, and where nothing is printed over it. */
  static Optional<FilmUnderOthers> of(
      PrintPlan plan, Design design, Separation base, Limits.Artwork limits) {
    if (base.key() || base.artwork().isEmpty() || plan.pastes().get(base.paste()).transparent()) {
      return Optional.empty();
    }
    PlacedCells cells = PlacedCells.of(base);
    double all = cells.printed();
    List<Separation> later =
        design.separations().stream()
            .filter(s -> s.number() > base.number() && s.artwork().isPresent())
            .filter(s -> all - cells.beside(PlacedCells.of(List.of(s)), 0) > 0)
            .toList();
    if (base.printed().squareCm() == 0 || later.isEmpty()) {
      return Optional.empty();
    }
    List<Separation> opaque =
        later.stream().filter(s -> !plan.pastes().get(s.paste()).transparent()).toList();
    double covered = (all - cells.beside(PlacedCells.of(later), 0)) / all;
    double hidden = (all - cells.beside(PlacedCells.of(opaque), 0)) / all;
    double beside = 1 - covered;
    boolean underlay = covered >= limits.underlayCovered().fraction();
    double least = limits.underlaySeen().fraction();
    double far = cells.beside(PlacedCells.of(later), limits.underlayRim().mm()) / all;
    return Optional.of(
        new FilmUnderOthers(
            design.name(),
            base.paste(),
            later.stream().map(Separation::paste).distinct().toList(),
            opaque.stream().map(Separation::paste).distinct().toList(),
            new Share(covered),
            new Share(hidden),
            new Area(beside * base.printed().squareCm()),
            new Share(beside),
            underlay,
            underlay && beside - far >= least && far < least,
            hidden >= limits.underlayCovered().fraction(),
            later.stream().map(s -> new Related(Tie.OTHER_FILM, path(s))).toList(),
            path(base)));
  }

  private static PlanPath path(Separation separation) {
    return separation.path().key("artwork");
  }

  /** True if it lies under another colour as an underlay, of two in any order. */
  public boolean isUnder(String one, String other) {
    return underlay
        && (paste.equals(one) && over.contains(other) || paste.equals(other) && over.contains(one));
  }
}
