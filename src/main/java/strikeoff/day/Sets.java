package strikeoff.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import strikeoff.document.GivenUp;
import strikeoff.layout.Footprint;
import strikeoff.layout.Placement;

/** Splits placements into sets: what the table shows at once. */
public final class Sets {

  /** Along the cloth from its start, then across. */
  static final Comparator<Placement> ALONG =
      Comparator.comparingDouble((Placement p) -> p.x().mm())
          .thenComparing(p -> p.y().mm())
          .thenComparing(Placement::number)
          .thenComparing(Placement::id);

  private Sets() {}

  /**
   * A placement with what is printed at it in one step.
   *
   * @param colours its footprints in the order of printing, never empty
   * @param frames what its frames cover together; not to be changed
   */
  public record Motif(Placement placement, List<Footprint> colours, Envelope frames) {
    public Motif {
      colours = List.copyOf(colours);
    }

    public Motif(Placement placement, List<Footprint> colours) {
      this(placement, colours, new Envelope());
      colours.forEach(colour -> frames.expandToInclude(colour.frame().getEnvelopeInternal()));
    }

    /** What one sees of it on the cloth. */
    Envelope lies() {
      return placement.outline().getEnvelopeInternal();
    }
  }

  /**
   * Motifs that are printed before the cloth moves on.
   *
   * @param from lower end of their frames and loose boards along the cloth, mm; with fixed boards
   *     what lies at the table's start
   * @param to upper end
   */
  public record PrintSet(int number, List<Motif> motifs, double from, double to) {
    public PrintSet {
      motifs = List.copyOf(motifs);
    }
  }

  /**
   * Along the cloth from its start, as many as lie on the table without the cloth being moved:
   * those that take a board each on one of its own, and all frames within one table length. What no
   * board can lie under, since one lies there already or fixed ones stand elsewhere, is left for a
   * later set. A frame longer than table or board makes a set alone; that is another finding.
   */
  public static List<PrintSet> split(List<Motif> motifs, Boards boards) {
    List<Motif> left = new ArrayList<>(motifs);
    left.sort(Comparator.comparing(Motif::placement, ALONG));
    List<PrintSet> sets = new ArrayList<>();
    while (!left.isEmpty()) {
      GivenUp.ifAsked();
      double start = boards.fixed() ? FixedRow.start(left, boards) : Double.NaN;
      Filling filling = new Filling(boards, start);
      List<Motif> set = new ArrayList<>();
      List<Motif> later = new ArrayList<>();
      boolean full = false;
      int at = 0;
      while (at < left.size() && !full) {
        Filling.Room room = filling.add(left.get(at));
        full = room == Filling.Room.FULL;
        (room == Filling.Room.TAKEN ? set : later).add(left.get(at));
        at++;
      }
      later.addAll(left.subList(at, left.size()));
      if (set.isEmpty()) {
        Motif alone = later.remove(0);
        sets.add(
            new PrintSet(
                sets.size() + 1,
                List.of(alone),
                alone.frames().getMinX(),
                alone.frames().getMaxX()));
      } else {
        double from = boards.fixed() ? start : filling.covered().getMinX();
        sets.add(new PrintSet(sets.size() + 1, set, from, filling.covered().getMaxX()));
      }
      left = later;
    }
    return sets;
  }

  /** Placements 1, 3, 5 … and then 2, 4, 6 …. */
  static <T> List<T> everyOther(List<T> all) {
    List<T> result = new ArrayList<>(all.size());
    for (int first = 0; first < 2; first++) {
      for (int i = first; i < all.size(); i += 2) {
        result.add(all.get(i));
      }
    }
    return result;
  }
}
