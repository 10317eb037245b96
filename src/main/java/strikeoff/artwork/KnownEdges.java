package strikeoff.artwork;

import java.util.Map;
import java.util.WeakHashMap;

/**
 * Edges of films, each found once for all that it is fitted to, as long as somebody has the film.
 */
final class KnownEdges {

  private final Map<Bits, EdgePoints> known = new WeakHashMap<>();

  /**
   * @param along mm from one point of a row to the next, the same whenever it is asked for
   * @param across mm from one row to the next, likewise
   */
  EdgePoints of(Bits film, double along, double across) {
    return known.computeIfAbsent(film, f -> EdgePoints.of(f, along, across));
  }
}
