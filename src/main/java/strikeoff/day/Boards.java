package strikeoff.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Envelope;
import strikeoff.day.Sets.Motif;
import strikeoff.plan.Table;
import strikeoff.units.Length;

/**
 * The boards of a table. Loose ones are set under the motifs, each in the middle of its board, so
 * that they lie at the motifs' pitch; where there is nothing that needs one, they are pushed
 * together into one top. Fixed ones stand along the table from its start.
 */
public final class Boards {

  private final double table;
  private final Optional<Table.Stations> stations;
  private final Predicate<Motif> stands;

  /** The least length so far that the table was too short for, mm. */
  private double tooLong = Double.POSITIVE_INFINITY;

  /**
   * @param stands what needs a board of its own
   */
  Boards(Table table, Predicate<Motif> stands) {
    this(table.length().mm(), table.stations(), stands);
  }

  private Boards(double table, Optional<Table.Stations> stations, Predicate<Motif> stands) {
    this.table = table;
    this.stations = stations;
    this.stands = stands;
  }

  /** The same boards on a table of another length, mm. */
  Boards on(double length) {
    return new Boards(length, stations, stands);
  }

  double table() {
    return table;
  }

  /** True if the table is as long as that, mm. */
  boolean holds(double length) {
    boolean holds = length <= table + Length.TOLERANCE;
    tooLong = holds ? tooLong : Math.min(tooLong, length);
    return holds;
  }

  /** The least length so far that the table was too short for, mm; infinite if there is none. */
  double tooLong() {
    return tooLong;
  }

  /** What a motif takes of the cloth, with its loose board along it. */
  Envelope needs(Motif motif) {
    Envelope needs = new Envelope(motif.frames());
    if (needsOne(motif) && !fixed()) {
      Envelope board = under(motif);
      needs.expandToInclude(board.getMinX(), needs.getMinY());
      needs.expandToInclude(board.getMaxX(), needs.getMinY());
    }
    return needs;
  }

  boolean fixed() {
    return stations.map(Table.Stations::fixed).orElse(false);
  }

  /** True if the table has boards and the motif needs one of its own. */
  boolean needsOne(Motif motif) {
    return stations.isPresent() && stands.test(motif);
  }

  int count() {
    return stations.map(Table.Stations::count).orElse(Integer.MAX_VALUE);
  }

  /** From the beginning of one fixed board to that of the next, mm. */
  double step() {
    return stations.map(s -> s.length().mm() + s.gap().mm()).orElse(0.0);
  }

  double length() {
    return stations.map(s -> s.length().mm()).orElse(0.0);
  }

  /** The loose board under a motif; its place on the cloth, mm. */
  Envelope under(Motif motif) {
    double halfLength = stations.orElseThrow().length().mm() / 2;
    double halfWidth = stations.orElseThrow().width().mm() / 2;
    var middle = motif.frames().centre();
    return new Envelope(
        middle.x - halfLength, middle.x + halfLength, middle.y - halfWidth, middle.y + halfWidth);
  }

  /** The fixed boards' places on a cloth whose x lies at the table's start. */
  List<Envelope> fixedAt(double x) {
    List<Envelope> row = new ArrayList<>();
    for (int i = 0; i < stations.orElseThrow().count(); i++) {
      double from = x + i * step();
      row.add(new Envelope(from, from + length(), 0, 0));
    }
    return row;
  }

  /** The number of the fixed board, from 0, on which a motif's frames lie wholly. */
  OptionalInt holding(Motif motif, double x) {
    Envelope frames = motif.frames();
    if (step() <= 0) {
      return OptionalInt.empty();
    }
    // Only the board under the middle of the frames can hold them.
    int number = (int) Math.floor((frames.centre().x - x) / step());
    double from = x + number * step();
    boolean holds =
        number >= 0
            && number < count()
            && frames.getMinX() >= from - Length.TOLERANCE
            && frames.getMaxX() <= from + length() + Length.TOLERANCE;
    return holds ? OptionalInt.of(number) : OptionalInt.empty();
  }

  /** Boards without a gap between them are one. */
  static List<Envelope> joined(List<Envelope> boards) {
    List<Envelope> joined = new ArrayList<>();
    boards.stream()
        .sorted((one, other) -> Double.compare(one.getMinX(), other.getMinX()))
        .forEach(
            board -> {
              Envelope last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
              if (last != null && board.getMinX() <= last.getMaxX() + Length.TOLERANCE) {
                last.expandToInclude(board.getMaxX(), last.getMinY());
              } else {
                joined.add(new Envelope(board));
              }
            });
    return joined;
  }

  /**
   * True if what is joined holds a frame from end to end, or there is no gap in the table's top.
   */
  public static boolean hold(List<Envelope> joined, Envelope frame) {
    return joined.isEmpty()
        || joined.stream()
            .anyMatch(
                b ->
                    frame.getMinX() >= b.getMinX() - Length.TOLERANCE
                        && frame.getMaxX() <= b.getMaxX() + Length.TOLERANCE);
  }
}
