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
 * @param moved the same if it were moved, and made larger or smaller, as fits best; as it lies
 *     where it fits like that or turned over by the policy
 * @param right how far its middle is moved for that, to the left if negative
 * @param far the same towards the far edge
 * @param scale how large it is made for that, of what it is
 * @param by how far a corner of its rectangle comes to lie from where it was
 * @param length about how long its lines are: half of the way round them, from cell to cell
 * @param evenly round how much of another colour's edge ground of one width lies between it and the
 *     outline, as a share of that edge, of the colour where that is most. A colour that was choked
 *     leaves it all round; of an outline that was moved or scaled it grows, and goes over into a
 *     lap
 * @param tolerance how far a frame can be off on this table
 */
public record KeyOnEdges(
    String design,
    String file,
    List<String> others,
    Share along,
    Share turned,
    Share moved,
    Length right,
    Length far,
    Share scale,
    Length by,
    Length length,
    Share evenly,
    boolean railed,
    Length tolerance,
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
        all.add(of(design, key, others, railed, policy));
      }
    }
    return all;
  }

  private static KeyOnEdges of(
      Design design, Separation key, List<Separation> others, boolean railed, Policy policy) {
    Length tolerance = policy.registration(railed);
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
    double fits = policy.artwork().keyFits().fraction();
    double best = Math.max(along, turned) / all;
    // It is looked for only where it lies wrong: that takes a while.
    OutlineFit fit =
        best >= fits
            ? new OutlineFit(along / all, 0, 0, 1)
            : OutlineFit.best(
                cells,
                others.stream().map(other -> other.artwork().orElseThrow().cells()).toList(),
                tolerance.mm(),
                policy.artwork().keyMovedMost().mm(),
                policy.artwork().samePage().fraction());
    return new KeyOnEdges(
        design.name(),
        key.artwork().orElseThrow().file(),
        others.stream().map(other -> other.artwork().orElseThrow().file()).distinct().toList(),
        new Share(along / all),
        new Share(turned / all),
        new Share(fit.share()),
        new Length(fit.right()),
        new Length(fit.far()),
        new Share(fit.scale()),
        new Length(fit.by(cells)),
        // Of a line's two edges each counts half.
        new Length(edge(cells) / 2),
        evenly(design, key, others),
        railed,
        tolerance,
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

  private static Share evenly(Design design, Separation key, List<Separation> others) {
    double most = 0;
    for (Separation other : others) {
      double gap =
          design.joints().stream()
              .filter(joint -> joint.isBetween(key.number(), other.number()))
              .flatMap(joint -> joint.openGap().stream())
              .mapToDouble(open -> open.over().mm())
              .sum();
      most = gap == 0 ? most : Math.max(most, gap / edge(other.artwork().orElseThrow().cells()));
    }
    return new Share(most);
  }

  /** How long the edge of a print is about, from cell to cell, in mm. */
  private static double edge(PrintedCells cells) {
    double edge = 0;
    for (int row = 0; row < cells.rows(); row++) {
      for (int column = 0; column < cells.columns(); column++) {
        if (cells.share(column, row) > 0) {
          edge += CellEdges.bareSides(cells, column, row) * cells.cellLength();
        }
      }
    }
    return edge;
  }

  /** How many times as much of it fits turned over; endless if nothing fits as it lies. */
  public double better() {
    return along.fraction() == 0 ? Double.MAX_VALUE : turned.fraction() / along.fraction();
  }

  /** How many times as much of it fits once it is moved; endless if nothing fits as it lies. */
  public double movedBetter() {
    return along.fraction() == 0 ? Double.MAX_VALUE : moved.fraction() / along.fraction();
  }

  /** True if it is moved by more than a frame can be off. */
  public boolean offByMore() {
    return by.mm() > tolerance.mm();
  }

  /** True if it is made larger or smaller by so much that a frame can't be off by it. */
  public boolean otherSize() {
    double middle = Math.hypot(right.mm(), far.mm());
    return by.mm() - middle > tolerance.mm();
  }
}
