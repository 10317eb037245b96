package strikeoff.artwork;

/**
 * Two films over each other, on one grid and seen from the right side.
 *
 * @param third what all other films of the design print there
 */
record TwoFilms(Bits one, Bits other, Bits third) {

  /** Two films of one grid, and nothing besides. */
  static TwoFilms alone(Bits one, Bits other) {
    return new TwoFilms(one, other, new Bits(one.columns(), one.rows()));
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
