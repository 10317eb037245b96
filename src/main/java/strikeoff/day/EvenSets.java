package strikeoff.day;

import java.util.List;
import strikeoff.day.Sets.Motif;
import strikeoff.day.Sets.PrintSet;
import strikeoff.document.GivenUp;
import strikeoff.units.Length;

/**
 * Splits placements for several people who print at the same time: into no more sets than the table
 * needs, as even as they come out on the least of its length that will do. Where the table is
 * filled up first, little may be left for the last set, at which all but one of them stand idle.
 * More table changes nothing then, until it saves a set, or saves people who go by station a round.
 */
final class EvenSets {

  /** To so many mm. */
  private static final double FINE = 1;

  /** Lengths that are tried to save a round: a set of as many copies more. */
  private static final int MOST_LENGTHS = 60;

  private EvenSets() {}

  /**
   * @param atOnce how many stations are printed at the same time; 1 if people don't go by station
   */
  static List<PrintSet> of(List<Motif> motifs, Boards boards, int atOnce) {
    List<PrintSet> filled = Sets.split(motifs, boards);
    if (filled.size() < 2) {
      return filled;
    }
    Boards next = boards.on(least(motifs, boards, filled.size()));
    List<PrintSet> best = Sets.split(motifs, next);
    for (int i = 0; i < MOST_LENGTHS && atOnce > 1 && next.tooLong() <= boards.table(); i++) {
      next = boards.on(next.tooLong());
      List<PrintSet> other = Sets.split(motifs, next);
      best = rounds(other, atOnce) < rounds(best, atOnce) ? other : best;
    }
    return best;
  }

  /** The shortest table that needs no more sets, mm; no shorter than a motif that it holds. */
  private static double least(List<Motif> motifs, Boards boards, int sets) {
    double tooShort = 0;
    for (Motif motif : motifs) {
      double length = boards.needs(motif).getWidth();
      if (length <= boards.table() + Length.TOLERANCE) {
        tooShort = Math.max(tooShort, Math.min(length, boards.table()));
      }
    }
    if (Sets.split(motifs, boards.on(tooShort)).size() <= sets) {
      return tooShort;
    }
    double enough = boards.table();
    while (enough - tooShort > FINE) {
      GivenUp.ifAsked();
      double between = (enough + tooShort) / 2;
      if (Sets.split(motifs, boards.on(between)).size() <= sets) {
        enough = between;
      } else {
        tooShort = between;
      }
    }
    return enough;
  }

  /** How often people go to the next stations together. */
  private static int rounds(List<PrintSet> sets, int atOnce) {
    return sets.stream().mapToInt(set -> (set.motifs().size() + atOnce - 1) / atOnce).sum();
  }
}
