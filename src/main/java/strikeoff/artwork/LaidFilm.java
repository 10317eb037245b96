package strikeoff.artwork;

import strikeoff.units.Length;

/**
 * A film on a design.
 *
 * @param x where its rectangle begins, from the design's left edge
 * @param y the same from its near edge
 */
public record LaidFilm(Wanted film, Length x, Length y) {

  double left() {
    return x.mm();
  }

  double right() {
    return x.plus(film.size().along()).mm();
  }

  double near() {
    return y.mm();
  }

  double far() {
    return y.plus(film.size().across()).mm();
  }

  /** True if another fills the same rectangle. */
  boolean fillsAs(LaidFilm other) {
    return x.equals(other.x) && y.equals(other.y) && film.size().equals(other.film.size());
  }
}
