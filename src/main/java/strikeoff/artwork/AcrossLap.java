package strikeoff.artwork;

import java.util.Optional;
import strikeoff.evidence.FilmPlace;
import strikeoff.plan.Artwork;
import strikeoff.units.Length;

/**
 * How wide films are across a lap: the way across is the shortest one through what both print.
 *
 * @param along mm from one point of a row to the next
 * @param across mm from one row to the next
 */
record AcrossLap(Bits one, Bits other, double along, double across) {

  /** So many ways are tried: the best one is missed by 4° at most, which adds 0.2 %. */
  private static final int WAYS = 24;

  private static final double MOST = Artwork.WIDEST_FINE.mm();

  /**
   * How wide a film is there, to a point or so.
   *
   * @param place in a lap, from the films' left near corner
   * @return empty if it is wider than what is fine
   */
  Optional<Length> of(Bits film, FilmPlace place) {
    double[] laps = new double[WAYS];
    double least = MOST;
    for (int way = 0; way < WAYS; way++) {
      laps[way] = chord(one, other, place, way);
      least = Math.min(least, laps[way]);
    }
    double width = MOST;
    for (int way = 0; way < WAYS; way++) {
      // Slender laps are as short several ways.
      if (laps[way] <= least + step()) {
        width = Math.min(width, chord(film, film, place, way));
      }
    }
    return width < MOST ? Optional.of(new Length(width)) : Optional.empty();
  }

  /** How far both are set there, one way and back, in mm. */
  private double chord(Bits film, Bits another, FilmPlace place, int way) {
    double angle = Math.PI * way / WAYS;
    double x = Math.cos(angle) * step() / along;
    double y = Math.sin(angle) * step() / across;
    int there = reach(film, another, place, x, y);
    int back = reach(film, another, place, -x, -y);
    // The place itself is counted on both sides.
    return Math.max(0, there + back - 1) * step();
  }

  /** How many steps one way are set, the first of them at the place itself. */
  private int reach(Bits film, Bits another, FilmPlace place, double x, double y) {
    double column = place.x().mm() / along;
    double row = film.rows() - place.y().mm() / across;
    int steps = 0;
    while (steps * step() <= MOST) {
      int toColumn = (int) Math.floor(column + steps * x);
      int toRow = (int) Math.floor(row + steps * y);
      if (!film.get(toColumn, toRow) || !another.get(toColumn, toRow)) {
        break;
      }
      steps++;
    }
    return steps;
  }

  private double step() {
    return Math.min(along, across) / 2;
  }
}
