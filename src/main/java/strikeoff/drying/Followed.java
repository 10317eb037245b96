package strikeoff.drying;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.drying.DryingClock.Change;

/**
 * Films that were followed through several airs already. Another one of the same need that lies in
 * the same airs for as long, until it is dry, takes as long to each state, whenever it began and
 * whatever comes afterwards; so a run that is tried with one change is followed anew only where the
 * change tells.
 */
final class Followed {

  /** Ways that are kept; past it all are forgotten, so that they don't fill memory. */
  private static final int MOST = 20_000;

  /** By identity: films of one separation share what they need. */
  private final Map<FilmNeed, Map<Air, Way>> begun = new IdentityHashMap<>();

  private int kept;

  /** Airs that a film has lain in so far. */
  private static final class Way {

    /** By the air that comes next, and seconds from the film's beginning to it. */
    private final Map<Change, Way> next = new HashMap<>(2);

    /** If it is left in the last of them; null where nobody has asked. */
    private Times left;
  }

  /**
   * How long a film takes to each state, if that is known.
   *
   * @param from when it began to dry
   * @param began where in all changes that is
   */
  Optional<Times> times(FilmNeed need, long from, List<Change> through, int began) {
    Map<Air, Way> ways = begun.get(need);
    Way way = ways == null ? null : ways.get(through.get(began).air());
    for (int next = began + 1; way != null; next++) {
      boolean isLast = next == through.size();
      if (way.left != null && (isLast || from + way.left.last() <= through.get(next).second())) {
        return Optional.of(way.left);
      }
      way = isLast ? null : way.next.get(after(from, through.get(next)));
    }
    return Optional.empty();
  }

  /** Keeps how long it takes, by the airs that it lies in until it is dry on the slowest day. */
  void keep(FilmNeed need, long from, List<Change> through, int began, Times times) {
    if (kept++ >= MOST) {
      begun.clear();
      kept = 0;
    }
    Way way =
        begun
            .computeIfAbsent(need, n -> new HashMap<>())
            .computeIfAbsent(through.get(began).air(), air -> new Way());
    for (int next = began + 1;
        next < through.size() && through.get(next).second() < from + times.last();
        next++) {
      way = way.next.computeIfAbsent(after(from, through.get(next)), change -> new Way());
    }
    way.left = times;
  }

  private static Change after(long from, Change change) {
    return new Change(change.second() - from, change.air());
  }
}
