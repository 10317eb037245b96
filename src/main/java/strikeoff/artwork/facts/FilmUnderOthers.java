package strikeoff.artwork.facts;

import java.util.List;
import java.util.Optional;
import strikeoff.document.GivenUp;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Artwork;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintedCells;
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
    PrintedCells cells = base.artwork().get().cells();
    List<Separation> later =
        design.separations().stream()
            .filter(s -> s.number() > base.number() && s.artwork().isPresent())
            .filter(s -> covered(base, cells, List.of(s)) > 0)
            .toList();
    if (base.printed().squareCm() == 0 || later.isEmpty()) {
      return Optional.empty();
    }
    List<Separation> opaque =
        later.stream().filter(s -> !plan.pastes().get(s.paste()).transparent()).toList();
    double all = printed(cells);
    double covered = covered(base, cells, later) / all;
    double hidden = covered(base, cells, opaque) / all;
    double beside = 1 - covered;
    boolean underlay = covered >= limits.underlayCovered().fraction();
    double least = limits.underlaySeen().fraction();
    double far = off(base, cells, later, limits.underlayRim().mm()) / all;
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

  /** How much a film prints, in cells. */
  static double printed(PrintedCells cells) {
    long sum = 0;
    for (int row = 0; row < cells.rows(); row++) {
      for (int column = 0; column < cells.columns(); column++) {
        sum += cells.share(column, row);
      }
    }
    return (double) sum / PrintedCells.FULL;
  }

  /** How much of it lies where others print, in its cells. */
  private static double covered(Separation film, PrintedCells cells, List<Separation> others) {
    return printed(cells) - off(film, cells, others, 0);
  }

  /**
   * How much of a film lies beside others, further away than that, in its cells. What others print
   * of a cell is taken to lie beside each other, and to lie on what the film prints of it.
   */
  static double off(Separation film, PrintedCells cells, List<Separation> others, double mm) {
    double off = 0;
    for (int row = 0; row < cells.rows(); row++) {
      GivenUp.ifAsked();
      for (int column = 0; column < cells.columns(); column++) {
        int share = cells.share(column, row);
        if (share > 0) {
          double x = film.x().mm() + (column + 0.5) * cells.cellLength();
          double y = film.y().mm() + (row + 0.5) * cells.cellWidth();
          int under = 0;
          for (Separation other : others) {
            under += most(other, x, y, mm);
          }
          off += Math.max(0, share - under);
        }
      }
    }
    return off / PrintedCells.FULL;
  }

  /** The most that a film prints of a cell no further than that from a place on the design. */
  private static int most(Separation film, double x, double y, double mm) {
    PrintedCells cells = film.artwork().map(Artwork::cells).orElseThrow();
    int along = (int) Math.ceil(mm / cells.cellLength());
    int across = (int) Math.ceil(mm / cells.cellWidth());
    int most = 0;
    for (int i = -along; i <= along && most < PrintedCells.FULL; i++) {
      for (int j = -across; j <= across && most < PrintedCells.FULL; j++) {
        most =
            Math.max(
                most,
                cells.at(
                    x - film.x().mm() + i * cells.cellLength(),
                    y - film.y().mm() + j * cells.cellWidth()));
      }
    }
    return most;
  }

  /** True if it lies under another colour as an underlay, of two in any order. */
  public boolean isUnder(String one, String other) {
    return underlay
        && (paste.equals(one) && over.contains(other) || paste.equals(other) && over.contains(one));
  }
}
