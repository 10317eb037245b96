package strikeoff.timeline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Envelope;
import strikeoff.layout.Footprint;
import strikeoff.layout.Placement;

/** Splits placements into sets: what the table shows at once. */
final class Sets {

  /** Rounding of lengths in mm. */
  static final double ROUNDING = 1e-6;

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
   */
  record Motif(Placement placement, List<Footprint> colours) {
    Motif {
      colours = List.copyOf(colours);
    }
  }

  /**
   * Motifs that are printed before the cloth moves on.
   *
   * @param from lower end of their frames along the cloth, mm
   * @param to upper end
   */
  record PrintSet(int number, List<Motif> motifs, double from, double to) {
    PrintSet {
      motifs = List.copyOf(motifs);
    }
  }

  /**
   * Along the cloth from its start, as many as fit: at most as many as there are stations of those
   * that stand on them, and all frames within one table length. A frame longer than the table makes
   * a set alone; that is another finding.
   */
  static List<PrintSet> split(
      List<Motif> motifs, double tableLength, int stations, Predicate<Motif> onStation) {
    List<Motif> sorted = new ArrayList<>(motifs);
    sorted.sort(Comparator.comparing(Motif::placement, ALONG));
    List<PrintSet> sets = new ArrayList<>();
    List<Motif> open = new ArrayList<>();
    Envelope covered = new Envelope();
    int taken = 0;
    for (Motif motif : sorted) {
      Envelope frames = frames(motif);
      Envelope together = new Envelope(covered);
      together.expandToInclude(frames);
      if (!open.isEmpty()
          && ((taken >= stations && onStation.test(motif))
              || together.getWidth() > tableLength + ROUNDING)) {
        sets.add(new PrintSet(sets.size() + 1, open, covered.getMinX(), covered.getMaxX()));
        open = new ArrayList<>();
        taken = 0;
        together = frames;
      }
      open.add(motif);
      taken += onStation.test(motif) ? 1 : 0;
      covered = together;
    }
    if (!open.isEmpty()) {
      sets.add(new PrintSet(sets.size() + 1, open, covered.getMinX(), covered.getMaxX()));
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

  private static Envelope frames(Motif motif) {
    Envelope all = new Envelope();
    for (Footprint footprint : motif.colours()) {
      all.expandToInclude(footprint.frame().getEnvelopeInternal());
    }
    return all;
  }
}
