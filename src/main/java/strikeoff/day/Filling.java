package strikeoff.day;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import strikeoff.day.Sets.Motif;
import strikeoff.units.Length;

/** What lies on the table at once, filled up motif by motif. */
final class Filling {

  /** What became of a motif. */
  enum Room {
    TAKEN,
    /** No board can lie there: another motif has it, or the fixed ones stand elsewhere. */
    NO_BOARD,
    /** The table, or the row of boards, is full. */
    FULL
  }

  private final Boards boards;
  private final double start;
  private final Envelope covered = new Envelope();
  private final List<Envelope> set = new ArrayList<>();
  private final List<Envelope> onBoards = new ArrayList<>();

  /**
   * @param start what of the cloth lies at the table's start, mm; not a number if that is open yet,
   *     as it must not be with fixed boards
   */
  Filling(Boards boards, double start) {
    this.boards = boards;
    this.start = start;
  }

  Envelope covered() {
    return covered;
  }

  /** Loose boards by now, where they lie on the cloth. */
  List<Envelope> looseBoards() {
    return set;
  }

  Room add(Motif motif) {
    Envelope board = null;
    boolean shares = false;
    if (boards.needsOne(motif)) {
      // What is printed over another lies on its board.
      shares = meetsOne(motif.lies(), onBoards);
      if (!shares && set.size() >= boards.count()) {
        return Room.FULL;
      }
      if (boards.fixed()) {
        var number = boards.holding(motif, start);
        if (number.isEmpty()) {
          return Room.NO_BOARD;
        }
        board = boards.fixedAt(start).get(number.getAsInt());
      } else {
        board = boards.under(motif);
      }
      if (!shares && meetsOne(board, set)) {
        return Room.NO_BOARD;
      }
    }
    Envelope together = new Envelope(covered);
    together.expandToInclude(boards.needs(motif));
    if (!fits(together)) {
      return Room.FULL;
    }
    covered.init(together);
    if (board != null) {
      onBoards.add(motif.lies());
      if (!shares) {
        set.add(board);
      }
    }
    return Room.TAKEN;
  }

  private boolean fits(Envelope together) {
    return Double.isNaN(start)
        ? boards.holds(together.getWidth())
        : together.getMinX() >= start - Length.TOLERANCE
            && boards.holds(together.getMaxX() - start);
  }

  private static boolean meetsOne(Envelope one, List<Envelope> others) {
    for (Envelope other : others) {
      if (meet(one, other)) {
        return true;
      }
    }
    return false;
  }

  private static boolean meet(Envelope one, Envelope other) {
    Envelope common = one.intersection(other);
    // Fixed boards have no place across the cloth.
    boolean row = one.getHeight() == 0;
    return !common.isNull()
        && common.getWidth() > Length.TOLERANCE
        && (row || common.getHeight() > Length.TOLERANCE);
  }
}
