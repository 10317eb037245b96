package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintedCells;
import strikeoff.policy.Policy;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * How much of an outline's film runs along edges of the other colours, by the films' cells of about
 * a millimetre.
 *
 * @param file the outline's film, as the plan writes it
 * @param others files of the colours that it is held against
 * @param along share of what it prints that lies as near to an edge as a frame can be off
 * @param turned the same if it were turned over, left for right
 * @param turnedOver true if, by the policy, it lies turned over: so much more of it would fit then
 */
public record KeyOnEdges(
    String design,
    String file,
    List<String> others,
    Share along,
    Share turned,
    boolean turnedOver,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public KeyOnEdges {
    others = List.copyOf(others);
    related = List.copyOf(related);
  }

  /** Each outline of a design over those that are none, where they lie on one rectangle. */
  static List<KeyOnEdges> of(Design design, boolean railed, Policy policy) {
    List<KeyOnEdges> all = new ArrayList<>();
    for (Separation key : design.separations()) {
      List<Separation> others =
          design.separations().stream()
              .filter(other -> !other.key() && other.artwork().isPresent())
              .filter(key::fillsRectangleOf)
              .toList();
      boolean prints = key.artwork().flatMap(film -> film.reach()).isPresent();
      if (key.key() && prints && !others.isEmpty()) {
        all.add(of(design, key, others, policy.registration(railed), policy));
      }
    }
    return all;
  }

  private static KeyOnEdges of(
      Design design, Separation key, List<Separation> others, Length tolerance, Policy policy) {
    List<CellEdges> edges =
        CellEdges.together(
            others.stream()
                .map(other -> CellEdges.of(other.artwork().orElseThrow().cells(), tolerance.mm()))
                .toList());
    PrintedCells cells = key.artwork().orElseThrow().cells();
    double all = 0;
    double along = 0;
    double turned = 0;
    for (int row = 0; row < cells.rows(); row++) {
      for (int column = 0; column < cells.columns(); column++) {
        int share = cells.share(column, row);
        if (share > 0) {
          double x = (column + 0.5) * cells.cellLength();
          double y = (row + 0.5) * cells.cellWidth();
          all += share;
          along += isNear(edges, x, y) ? share : 0;
          turned += isNear(edges, cells.length() - x, y) ? share : 0;
        }
      }
    }
    boolean turnedOver =
        turned >= policy.artwork().keyFits().fraction() * all
            && turned >= policy.artwork().keyFitsBetter().value() * along;
    return new KeyOnEdges(
        design.name(),
        key.artwork().orElseThrow().file(),
        others.stream().map(other -> other.artwork().orElseThrow().file()).distinct().toList(),
        new Share(along / all),
        new Share(turned / all),
        turnedOver,
        others.stream()
            .map(other -> new Related(Tie.OTHER_FILM, other.path().key("artwork")))
            .toList(),
        key.path().key("artwork"));
  }

  private static boolean isNear(List<CellEdges> edges, double x, double y) {
    for (CellEdges one : edges) {
      if (one.near(x, y)) {
        return true;
      }
    }
    return false;
  }
}
