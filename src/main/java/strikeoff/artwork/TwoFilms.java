package strikeoff.artwork;

import java.util.List;

/**
 * Two films of one rectangle over each other, on one grid and seen from the right side.
 *
 * @param third what all other films of the design print there
 */
record TwoFilms(Bits one, Bits other, Bits third) {

  /** Two films of one grid, and nothing besides. */
  static TwoFilms alone(Bits one, Bits other) {
    return new TwoFilms(one, other, new Bits(one.columns(), one.rows()));
  }

  /** On the grid of the one that has more points. */
  static TwoFilms of(Bits one, Bits other, List<Bits> others) {
    Bits grid = points(other) > points(one) ? other : one;
    Bits third = new Bits(grid.columns(), grid.rows());
    for (Bits film : others) {
      third.add(film.on(grid.columns(), grid.rows()));
    }
    return new TwoFilms(
        one.on(grid.columns(), grid.rows()), other.on(grid.columns(), grid.rows()), third);
  }

  private static long points(Bits bits) {
    return (long) bits.columns() * bits.rows();
  }

  int columns() {
    return one.columns();
  }

  int rows() {
    return one.rows();
  }

  /** Sixty-four columns of them as rows. */
  TwoFilms turned(int first) {
    return new TwoFilms(one.turned(first), other.turned(first), third.turned(first));
  }
}
