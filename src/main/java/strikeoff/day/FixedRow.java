package strikeoff.day;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Envelope;
import strikeoff.day.Sets.Motif;

/** Finds where a cloth has to lie so that fixed boards stand under the most of what comes next. */
final class FixedRow {

  /** So many motifs ahead are tried; a table shows no more in practice. */
  private static final int MOST_AHEAD = 40;

  private FixedRow() {}

  /**
   * What is to lie at the table's start so that the first motif is served and, after it, the most.
   *
   * @param motifs along the cloth from its start, not empty
   */
  static double start(List<Motif> motifs, Boards boards) {
    List<Motif> ahead = motifs.subList(0, Math.min(MOST_AHEAD, motifs.size()));
    Motif first = ahead.get(0);
    double best = boards.needsOne(first) ? middle(first, boards) : first.frames().getMinX();
    int most = served(ahead, boards, best);
    for (double start : starts(ahead, boards)) {
      if (serves(first, boards, start)) {
        int served = served(ahead, boards, start);
        if (served > most) {
          most = served;
          best = start;
        }
      }
    }
    return best;
  }

  /** The first motif in the middle of the first board. */
  private static double middle(Motif motif, Boards boards) {
    return motif.frames().centre().x - boards.length() / 2;
  }

  private static boolean serves(Motif motif, Boards boards, double start) {
    return new Filling(boards, start).add(motif) == Filling.Room.TAKEN;
  }

  private static int served(List<Motif> motifs, Boards boards, double start) {
    Filling filling = new Filling(boards, start);
    int served = 0;
    for (Motif motif : motifs) {
      served += filling.add(motif) == Filling.Room.TAKEN ? 1 : 0;
    }
    return served;
  }

  /** The best place is one where a motif's frames lie in the middle of a board, or at an end. */
  private static List<Double> starts(List<Motif> motifs, Boards boards) {
    TreeSet<Double> starts = new TreeSet<>();
    for (Motif motif : motifs) {
      if (boards.needsOne(motif)) {
        Envelope frames = motif.frames();
        for (int i = 0; i < Math.min(boards.count(), MOST_AHEAD); i++) {
          starts.add(middle(motif, boards) - i * boards.step());
          starts.add(frames.getMinX() - i * boards.step());
          starts.add(frames.getMaxX() - boards.length() - i * boards.step());
        }
      }
    }
    return new ArrayList<>(starts);
  }
}
