package strikeoff.artwork.facts;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Design;
import strikeoff.plan.Design.Separation;
import strikeoff.plan.PrintedCells;
import strikeoff.units.Length;
import strikeoff.units.Share;

/**
 * How much of an outline's film runs along edges of the other colours, by the films' cells of about
 * a millimetre.
 *
 * @param file the outline's film, as the plan writes it
 * @param along share of what it prints that lies as near to an edge as a frame can be off
 * @param turned the same if it were turned over, left for right
 */
public record KeyOnEdges(
    String design, String file, Share along, Share turned, List<Related> related, PlanPath path)
    implements Evidence {

  public KeyOnEdges {
    related = List.copyOf(related);
  }

  /** Each outline of a design over those that are none, where they lie on one rectangle. */
  static List<KeyOnEdges> of(Design design, Length tolerance) {
    List<KeyOnEdges> all = new ArrayList<>();
    for (Separation key : design.separations()) {
      List<Separation> others =
          design.separations().stream()
              .filter(other -> !other.key() && other.artwork().isPresent())
              .filter(key::fillsRectangleOf)
              .toList();
      boolean prints = key.artwork().flatMap(film -> film.reach()).isPresent();
      if (key.key() && prints && !others.isEmpty()) {
        all.add(of(design, key, others, tolerance));
      }
    }
    return all;
  }

  private static KeyOnEdges of(
      Design design, Separation key, List<Separation> others, Length tolerance) {
    List<Edges> edges =
        others.stream()
            .map(other -> Edges.of(other.artwork().orElseThrow().cells(), tolerance.mm()))
            .toList();
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
          along += edges.stream().anyMatch(e -> e.near(x, y)) ? share : 0;
          turned += edges.stream().anyMatch(e -> e.near(cells.length() - x, y)) ? share : 0;
        }
      }
    }
    return new KeyOnEdges(
        design.name(),
        key.artwork().orElseThrow().file(),
        new Share(along / all),
        new Share(turned / all),
        others.stream()
            .map(other -> new Related(Tie.OTHER_FILM, other.path().key("artwork")))
            .toList(),
        key.path().key("artwork"));
  }

  /** How many times as much of it fits turned over; endless if nothing fits as it lies. */
  public double better() {
    return along.fraction() == 0 ? Double.MAX_VALUE : turned.fraction() / along.fraction();
  }

  /** Where a film's edges are, or near to them. */
  private record Edges(PrintedCells cells, boolean[] near) {

    static Edges of(PrintedCells cells, double reach) {
      boolean[] near = new boolean[cells.columns() * cells.rows()];
      int along = (int) Math.round(reach / cells.cellLength());
      int across = (int) Math.round(reach / cells.cellWidth());
      for (int row = 0; row < cells.rows(); row++) {
        for (int column = 0; column < cells.columns(); column++) {
          if (isEdge(cells, column, row)) {
            for (int y = row - across; y <= row + across; y++) {
              for (int x = column - along; x <= column + along; x++) {
                if (isIn(cells, x, y)) {
                  near[y * cells.columns() + x] = true;
                }
              }
            }
          }
        }
      }
      return new Edges(cells, near);
    }

    private static boolean isEdge(PrintedCells cells, int column, int row) {
      int here = cells.share(column, row);
      return here > 0
          && (here < PrintedCells.FULL
              || isBare(cells, column - 1, row)
              || isBare(cells, column + 1, row)
              || isBare(cells, column, row - 1)
              || isBare(cells, column, row + 1));
    }

    private static boolean isBare(PrintedCells cells, int column, int row) {
      return isIn(cells, column, row) && cells.share(column, row) == 0;
    }

    private static boolean isIn(PrintedCells cells, int column, int row) {
      return column >= 0 && row >= 0 && column < cells.columns() && row < cells.rows();
    }

    boolean near(double x, double y) {
      int column = (int) Math.floor(x / cells.cellLength());
      int row = (int) Math.floor(y / cells.cellWidth());
      return isIn(cells, column, row) && near[row * cells.columns() + column];
    }
  }
}
