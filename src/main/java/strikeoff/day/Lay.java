package strikeoff.day;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import strikeoff.day.Sets.Motif;
import strikeoff.day.Sets.PrintSet;
import strikeoff.units.Length;

/**
 * How the cloth lies on the table, and what of it can be printed so.
 *
 * @param from what of the cloth lies at the table's start, mm
 * @param joined stretches of cloth that lie on boards without a gap; empty if the top has none
 * @param on ids of the placements under which a loose board lies
 * @param laidFor the set for which it was laid, which it shows whatever else; null if the plan
 *     itself says where it lies
 */
record Lay(Boards boards, double from, List<Envelope> joined, Set<Integer> on, PrintSet laidFor) {

  /**
   * Laid to where the most of what comes next fits, whatever comes first.
   *
   * @param next what comes next, in order, not empty
   * @param begin what lies at the table's start if that serves as well, mm; not a number if the
   *     cloth was laid already
   */
  static Lay forNext(Boards boards, List<PrintSet> next, double begin) {
    if (boards.fixed()) {
      return onFixed(boards, next, begin);
    }
    List<PrintSet> shown = shown(boards, next, Double.NaN);
    Envelope covered = new Envelope(next.get(0).from(), next.get(0).to(), 0, 0);
    for (PrintSet set : shown) {
      covered.expandToInclude(set.from(), 0);
      covered.expandToInclude(set.to(), 0);
    }
    boolean atBegin =
        covered.getMinX() >= begin - Length.TOLERANCE
            && covered.getMaxX() <= begin + boards.table() + Length.TOLERANCE;
    return of(boards, atBegin ? begin : covered.getMinX(), shown, next.get(0));
  }

  /** Laid where the plan says. */
  static Lay at(Boards boards, List<PrintSet> next, double from) {
    return of(boards, from, boards.fixed() ? List.of() : shown(boards, next, from), null);
  }

  private static Lay of(Boards boards, double from, List<PrintSet> shown, PrintSet laidFor) {
    if (boards.fixed()) {
      return new Lay(boards, from, Boards.joined(boards.fixedAt(from)), Set.of(), laidFor);
    }
    List<Envelope> loose = new ArrayList<>();
    Set<Integer> on = new HashSet<>();
    for (PrintSet set : shown) {
      for (Motif motif : set.motifs()) {
        if (boards.needsOne(motif) && on.add(motif.placement().id())) {
          loose.add(boards.under(motif));
        }
      }
    }
    return new Lay(boards, from, Boards.joined(loose), on, laidFor);
  }

  /** Fixed boards stand where they do for the first set that needs them, if that comes in time. */
  private static Lay onFixed(Boards boards, List<PrintSet> next, double begin) {
    PrintSet first = next.get(0);
    List<Double> places = new ArrayList<>(List.of(begin, first.from()));
    next.stream()
        .filter(set -> set.motifs().stream().anyMatch(boards::needsOne))
        .findFirst()
        .ifPresent(set -> places.add(set.from()));
    Lay best = null;
    long most = -1;
    for (double place : places) {
      if (!Double.isNaN(place)) {
        Lay lay = of(boards, place, List.of(), null);
        long shows = next.stream().takeWhile(lay::shows).count();
        if (shows > most) {
          most = shows;
          best = lay;
        }
      }
    }
    return most > 0
        ? new Lay(boards, best.from, best.joined, best.on, first)
        : of(boards, first.from(), List.of(), first);
  }

  /**
   * The sets, in order, that lie on the table together.
   *
   * @param start what lies at the table's start; not a number if that is open
   */
  private static List<PrintSet> shown(Boards boards, List<PrintSet> next, double start) {
    Filling filling = new Filling(boards, start);
    Set<Integer> taken = new HashSet<>();
    List<PrintSet> shown = new ArrayList<>();
    List<Envelope> free = new ArrayList<>();
    for (PrintSet set : next) {
      boolean all = true;
      boolean anyOnBoard = false;
      for (Motif motif : set.motifs()) {
        anyOnBoard |= boards.needsOne(motif);
        if (all && taken.add(motif.placement().id())) {
          all = filling.add(motif) == Filling.Room.TAKEN;
        }
      }
      if (all && !anyOnBoard) {
        set.motifs().forEach(motif -> free.add(motif.frames()));
      }
      List<Envelope> joined = Boards.joined(filling.looseBoards());
      if (!all || free.stream().anyMatch(frame -> !Boards.hold(joined, frame))) {
        break;
      }
      shown.add(set);
    }
    return shown;
  }

  boolean shows(PrintSet set) {
    return forThis(set)
        || set.motifs().stream().allMatch(motif -> onTable(motif.frames()) && carries(motif));
  }

  private boolean forThis(PrintSet set) {
    return laidFor != null
        && laidFor.number() == set.number()
        && laidFor.from() == set.from()
        && laidFor.to() == set.to();
  }

  private boolean onTable(Envelope frames) {
    return frames.getMinX() >= from - Length.TOLERANCE
        && frames.getMaxX() <= from + boards.table() + Length.TOLERANCE;
  }

  private boolean carries(Motif motif) {
    if (boards.needsOne(motif)) {
      return boards.fixed()
          ? boards.holding(motif, from).isPresent()
          : on.contains(motif.placement().id());
    }
    return boards.fixed() || Boards.hold(joined, motif.frames());
  }
}
