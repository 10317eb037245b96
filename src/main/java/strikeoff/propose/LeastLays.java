package strikeoff.propose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Table;
import strikeoff.units.Length;

/**
 * How often the cloth has to be laid anew at the least, so that the table shows what is printed.
 *
 * <p>Frames no two of which one table shows at once take a lay each. Along the cloth the most of
 * them are found from its start: the next one is the first of those that a table laid to the last
 * one's beginning does not show.
 *
 * <p>Loose boards are set under what takes one. They leave gaps, and no frame may lie over a gap:
 * what lies on none of the boards, wherever they are set, is printed at other times, with the
 * boards pushed together. A lay has no more boards than there are.
 */
final class LeastLays {

  private final double table;
  private final int boards;

  /** By the placement what shares its board: it is printed over another, or another over it. */
  private final Map<Integer, Integer> onBoard = new HashMap<>();

  private final Set<Integer> besides = new HashSet<>();

  LeastLays(PrintPlan plan, List<PrintTimes> films) {
    this.table = plan.table().length().mm();
    Table.Stations loose = plan.table().stations().filter(s -> !s.fixed()).orElse(null);
    this.boards = loose == null ? Integer.MAX_VALUE : loose.count();
    if (loose == null) {
      return;
    }
    Map<Integer, List<PrintTimes>> motifs = new HashMap<>();
    for (PrintTimes film : films) {
      String arrangement = film.print().placement().arrangement();
      if (plan.arrangements().get(arrangement).takesBoard()) {
        motifs.computeIfAbsent(film.placement(), id -> new ArrayList<>()).add(film);
      }
    }
    share(motifs);
    List<double[]> zones = zones(motifs, loose.length().mm() / 2);
    for (PrintTimes film : films) {
      if (!onBoard.containsKey(film.placement()) && !holds(zones, film)) {
        besides.add(film.placement());
      }
    }
    // Of a motif that now and then finds a board, some film may be printed there.
    films.stream().filter(film -> holds(zones, film)).forEach(f -> besides.remove(f.placement()));
  }

  private void share(Map<Integer, List<PrintTimes>> motifs) {
    Map<Integer, Envelope> lie = new HashMap<>();
    for (int id : motifs.keySet()) {
      Envelope own = motifs.get(id).get(0).print().placement().outline().getEnvelopeInternal();
      List<Integer> met =
          lie.keySet().stream().filter(other -> lie.get(other).intersects(own)).toList();
      Set<Integer> shared = new HashSet<>();
      met.forEach(other -> shared.add(onBoard.get(other)));
      onBoard.replaceAll((other, board) -> shared.contains(board) ? id : board);
      onBoard.put(id, id);
      lie.put(id, own);
    }
  }

  /** Where a board may lie under each motif, whichever of its colours are printed; joined. */
  private static List<double[]> zones(Map<Integer, List<PrintTimes>> motifs, double half) {
    List<double[]> zones = new ArrayList<>();
    for (List<PrintTimes> motif : motifs.values()) {
      double leastFrom = motif.stream().mapToDouble(PrintTimes::from).min().orElse(0);
      double mostFrom = motif.stream().mapToDouble(PrintTimes::from).max().orElse(0);
      double leastTo = motif.stream().mapToDouble(PrintTimes::to).min().orElse(0);
      double mostTo = motif.stream().mapToDouble(PrintTimes::to).max().orElse(0);
      zones.add(new double[] {(leastFrom + leastTo) / 2 - half, (mostFrom + mostTo) / 2 + half});
    }
    zones.sort(Comparator.comparingDouble(zone -> zone[0]));
    List<double[]> joined = new ArrayList<>();
    for (double[] zone : zones) {
      double[] last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && zone[0] <= last[1] + Length.TOLERANCE) {
        last[1] = Math.max(last[1], zone[1]);
      } else {
        joined.add(zone);
      }
    }
    return joined;
  }

  private static boolean holds(List<double[]> zones, PrintTimes film) {
    return zones.stream()
        .anyMatch(
            zone ->
                film.from() >= zone[0] - Length.TOLERANCE
                    && film.to() <= zone[1] + Length.TOLERANCE);
  }

  /** How many lays hold some of these films, at the least. */
  int of(List<PrintTimes> films) {
    return without(films, 0);
  }

  /**
   * The same, whichever few placements are printed at another time.
   *
   * @param few how many of them
   */
  int without(List<PrintTimes> films, int few) {
    int least = shown(films, few);
    int most = Integer.MAX_VALUE;
    for (int boarded = 0; boarded <= few; boarded++) {
      most = Math.min(most, onBoards(films, boarded) + besides(films, few - boarded));
    }
    return Math.max(least, most);
  }

  /**
   * LeastLays before and after the cloth was taken up, where all but few placements of some films
   * are printed before, and those few with others after.
   *
   * @param after films that are printed afterwards anyway
   */
  int parted(List<PrintTimes> before, List<PrintTimes> after, int few) {
    int afterwards = after.isEmpty() ? 0 : 1;
    int least = shown(before, few) + afterwards;
    int most = Integer.MAX_VALUE;
    boolean board = after.stream().anyMatch(f -> onBoard.containsKey(f.placement()));
    boolean beside = after.stream().anyMatch(f -> besides.contains(f.placement()));
    for (int boarded = 0; boarded <= few; boarded++) {
      for (int other = 0; other + boarded <= few; other++) {
        boolean both = (board || boarded > 0) && (beside || other > 0);
        most =
            Math.min(
                most, onBoards(before, boarded) + besides(before, other) + (both ? 2 : afterwards));
      }
    }
    return Math.max(least, most);
  }

  private int onBoards(List<PrintTimes> films, int few) {
    List<PrintTimes> own = films.stream().filter(f -> onBoard.containsKey(f.placement())).toList();
    if (own.isEmpty()) {
      return 0;
    }
    long apart = own.stream().map(f -> onBoard.get(f.placement())).distinct().count() - few;
    long full = apart <= 0 ? 0 : (apart + boards - 1) / boards;
    return Math.max((int) full, shown(own, few));
  }

  private int besides(List<PrintTimes> films, int few) {
    return shown(films.stream().filter(f -> besides.contains(f.placement())).toList(), few);
  }

  /** By the table's length alone. */
  private int shown(List<PrintTimes> films, int few) {
    List<PrintTimes> left = new ArrayList<>(films);
    left.sort(Comparator.comparingDouble(PrintTimes::from).thenComparing(PrintTimes::placement));
    int least = Integer.MAX_VALUE;
    // Whichever few are left out, one of these rounds has all of its frames.
    for (int round = 0; round <= few; round++) {
      Set<Integer> openers = openers(left);
      least = Math.min(least, openers.size());
      left.removeIf(film -> openers.contains(film.placement()));
    }
    return least;
  }

  /**
   * Placements of frames no two of which the table shows at once.
   *
   * @param films by the beginning of their frames
   */
  private Set<Integer> openers(List<PrintTimes> films) {
    Set<Integer> openers = new HashSet<>();
    double shown = Double.NEGATIVE_INFINITY;
    for (PrintTimes film : films) {
      if (film.to() > shown + Length.TOLERANCE && openers.add(film.placement())) {
        shown = film.from() + table;
      }
    }
    return openers;
  }
}
