package strikeoff.artwork;

import java.util.List;
import strikeoff.plan.Joint;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/**
 * The part of a design where two films can meet: where both their rectangles lie, and as far around
 * as one reaches the other. It has the points of the finer film.
 *
 * @param left from the design's left edge, in mm
 * @param near from its near edge
 * @param length along, in mm
 * @param width across
 */
record Canvas(double left, double near, double length, double width, int columns, int rows) {

  /**
   * Of two films.
   *
   * @param reach how far apart they may lie and still meet, in mm
   */
  static Canvas of(
      LaidFilm one, PictureMeasures first, LaidFilm other, PictureMeasures second, double reach) {
    Pair size = one.film().size();
    if (one.fillsAs(other)) {
      PictureMeasures finer = points(second) > points(first) ? second : first;
      return new Canvas(
          one.left(),
          one.near(),
          size.along().mm(),
          size.across().mm(),
          finer.columns(),
          finer.rows());
    }
    double left = Math.max(one.left(), other.left()) - reach;
    double right = Math.min(one.right(), other.right()) + reach;
    double near = Math.max(one.near(), other.near()) - reach;
    double far = Math.min(one.far(), other.far()) + reach;
    left = Math.max(left, Math.min(one.left(), other.left()));
    right = Math.min(right, Math.max(one.right(), other.right()));
    near = Math.max(near, Math.min(one.near(), other.near()));
    far = Math.min(far, Math.max(one.far(), other.far()));
    double along = Math.min(first.along(size), second.along(other.film().size()));
    double across = Math.min(first.across(size), second.across(other.film().size()));
    int columns = (int) Math.max(1, Math.round((right - left) / along));
    int rows = (int) Math.max(1, Math.round((far - near) / across));
    return new Canvas(left, near, columns * along, rows * across, columns, rows);
  }

  private static long points(PictureMeasures film) {
    return (long) film.columns() * film.rows();
  }

  /** Length of a point, in mm. */
  double along() {
    return length / columns;
  }

  /** Its width, in mm. */
  double across() {
    return width / rows;
  }

  Pair size() {
    return new Pair(new Length(length), new Length(width));
  }

  /** Films laid on it, in the order in which they are compared; the others are what prints too. */
  TwoFilms lay(List<LaidFilm> films, List<Bits> bits) {
    Bits third = new Bits(columns, rows);
    for (int i = 2; i < films.size(); i++) {
      third.add(lay(films.get(i), bits.get(i)));
    }
    return new TwoFilms(lay(films.get(0), bits.get(0)), lay(films.get(1), bits.get(1)), third);
  }

  private Bits lay(LaidFilm film, Bits bits) {
    Pair size = film.film().size();
    if (film.left() == left
        && film.near() == near
        && size.along().mm() == length
        && size.across().mm() == width) {
      return bits.on(columns, rows);
    }
    // The first row is the far one.
    return bits.laid(
        columns,
        rows,
        (film.left() - left) / along(),
        (near + width - film.far()) / across(),
        size.along().mm() / bits.columns() / along(),
        size.across().mm() / bits.rows() / across());
  }

  /** The same with its places on the rectangle of the second of the films. */
  Joint on(LaidFilm other, Joint joint) {
    Pair size = other.film().size();
    return joint.moved(
        new Length(left - other.left()),
        new Length(near - other.near()),
        size.along(),
        size.across());
  }
}
