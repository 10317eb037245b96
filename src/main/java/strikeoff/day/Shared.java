package strikeoff.day;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.plan.Equipment;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * The equipment that everybody shares: each piece serves one at a time. Whoever finds all of a kind
 * taken waits for the one that is free first.
 */
final class Shared {

  private final Daybook book;
  private final Map<Resource.Kind, List<Resource>> pieces = new EnumMap<>(Resource.Kind.class);
  private final Map<Resource.Kind, Set<Integer>> missing = new EnumMap<>(Resource.Kind.class);
  private final Map<Resource, Span> beside = new LinkedHashMap<>();

  Shared(Equipment equipment, Daybook book) {
    this.book = book;
    add(Resource.Kind.SINK, equipment.sinks());
    add(Resource.Kind.FAN, equipment.fans());
    add(Resource.Kind.HAIR_DRYER, equipment.hairDryers());
    add(Resource.Kind.DRYING_PLACE, equipment.dryingPlaces());
  }

  private void add(Resource.Kind kind, int count) {
    List<Resource> all = new ArrayList<>();
    for (int number = 1; number <= count; number++) {
      all.add(Resource.piece(kind, number, count));
    }
    pieces.put(kind, all);
  }

  /** Leaves all but so many pieces of a kind alone. */
  void use(Resource.Kind kind, int count) {
    pieces.computeIfPresent(kind, (k, all) -> all.subList(0, Math.min(count, all.size())));
  }

  /**
   * What is asked for though the room has none of it, with the numbers of the steps that ask. The
   * run goes on as if there were one.
   */
  Map<Resource.Kind, Set<Integer>> missing() {
    return missing;
  }

  /**
   * Books what takes a piece of equipment besides other things. Until one is free the others stand
   * waiting, with a task that says what for.
   *
   * @param others whom and what it holds as well
   */
  Task book(Entry entry, List<Resource> others, Resource.Kind kind, long seconds) {
    return book(entry, others, kind, seconds, Long.MIN_VALUE, HeldUp.NOBODY);
  }

  /**
   * The same, not before a second.
   *
   * @param after the task that ended then, by its index
   */
  Task book(
      Entry entry,
      List<Resource> others,
      Resource.Kind kind,
      long seconds,
      long notBefore,
      int after) {
    long free = book.start(others);
    long ready = book.start(others, notBefore);
    if (ready > free) {
      book.heldUp().byTask(after);
    }
    Resource piece = next(kind, ready, entry.step());
    if (book.freeAt(piece) > ready) {
      Entry queue = entry.queue(piece, waitsFor(kind));
      book.add(queue, others, ready, book.freeAt(piece) - ready);
      book.heldUp().by(piece);
    }
    List<Resource> held = new ArrayList<>(others);
    held.add(piece);
    return book.add(entry.piece(piece), held, book.start(held, notBefore), seconds);
  }

  /** When a piece is there for somebody who is ready for it. */
  long readyAt(Resource.Kind kind, long ready, Step step) {
    return Math.max(ready, book.freeAt(next(kind, ready, step.number())));
  }

  /** A piece that is in use beside other work, without a task of its own. */
  void take(Resource.Kind kind, int step, long from, long until) {
    Resource piece = next(kind, from, step);
    long begins = Math.max(from, book.freeAt(piece));
    long ends = Math.max(until, begins);
    book.take(piece, begins, ends);
    beside.merge(piece, new Moment(ends).since(new Moment(begins)), Span::plus);
  }

  /** How long pieces were in use beside other work, which no task tells. */
  Map<Resource, Span> beside() {
    return beside;
  }

  /**
   * Of the pieces that are free at a second the one that was used last, so that the others stay
   * free for those who come sooner; if none is free, the one that is free first.
   */
  Resource next(Resource.Kind kind, long ready, int step) {
    List<Resource> all = pieces.get(kind);
    if (all.isEmpty()) {
      missing.computeIfAbsent(kind, k -> new LinkedHashSet<>()).add(step);
      return Resource.piece(kind, 1, 1);
    }
    Resource best = all.get(0);
    for (Resource piece : all) {
      long free = book.freeAt(piece);
      boolean better =
          book.freeAt(best) > ready
              ? free < book.freeAt(best)
              : free <= ready && free > book.freeAt(best);
      best = better ? piece : best;
    }
    return best;
  }

  /** A wait for a piece of a kind. */
  Doing waitsFor(Resource.Kind kind) {
    return new Doing.ForPiece(kind, pieces.get(kind).size());
  }
}
