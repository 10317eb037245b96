package strikeoff.drying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.drying.DryingClock.Change;
import strikeoff.drying.DryingClock.States;

/**
 * Films that were followed through several airs already. One that began at the same second, and lay
 * in the same airs until it was dry, is in each state when that one was, whatever came afterwards;
 * so a run that is tried with a change near its end is not followed anew from its beginning.
 */
final class Followed {

  /** Films that are kept; past it all are forgotten, so that they don't fill memory. */
  private static final int MOST = 20_000;

  private final Map<Film, List<Way>> ways = new HashMap<>();
  private int kept;

  /** A film, by what it must lose, and when it began to dry. */
  record Film(FilmNeed need, long from) {

    // The same need, not an equal one: it is asked for with every film.
    @Override
    public boolean equals(Object other) {
      return other instanceof Film film && film.need == need && film.from == from;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(need) * 31 + Long.hashCode(from);
    }
  }

  /**
   * Airs that a film lay in until it was dry.
   *
   * @param airs the one it began in, and changes before {@code last}
   */
  private record Way(List<Change> airs, long last, States states) {

    boolean leads(List<Change> through, int began) {
      int many = airs.size();
      if (began + many > through.size()
          || began + many < through.size() && through.get(began + many).second() < last
          || !through.get(began).air().equals(airs.get(0).air())) {
        return false;
      }
      for (int i = 1; i < many; i++) {
        if (!through.get(began + i).equals(airs.get(i))) {
          return false;
        }
      }
      return true;
    }
  }

  /**
   * When a film is in each state, if that is known.
   *
   * @param began where in all changes the film begins
   */
  Optional<States> states(Film film, List<Change> through, int began) {
    for (Way way : ways.getOrDefault(film, List.of())) {
      if (way.leads(through, began)) {
        return Optional.of(way.states());
      }
    }
    return Optional.empty();
  }

  /**
   * @param last when the film is dry on the slowest day
   */
  States keep(Film film, List<Change> through, int began, long last, States states) {
    int end = began + 1;
    while (end < through.size() && through.get(end).second() < last) {
      end++;
    }
    if (kept++ >= MOST) {
      ways.clear();
      kept = 0;
    }
    Way way = new Way(List.copyOf(through.subList(began, end)), last, states);
    ways.computeIfAbsent(film, f -> new ArrayList<>(1)).add(way);
    return states;
  }
}
