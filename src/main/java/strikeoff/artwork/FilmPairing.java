package strikeoff.artwork;

import java.util.List;
import java.util.stream.Collectors;
import strikeoff.units.Length;

/**
 * All that a joint depends on: two pictures, those that may print between them, how far from the
 * first one each begins, and by what it is measured.
 */
record FilmPairing(
    PictureKey one,
    PictureKey other,
    List<PictureKey> thirds,
    List<Length> apart,
    JointLimits limits) {

  String text() {
    return String.join(
        " ",
        one.text(),
        other.text(),
        thirds.stream().map(PictureKey::text).collect(Collectors.joining(" and ")),
        apart.stream().map(a -> Double.toString(a.mm())).collect(Collectors.joining(" ")),
        limits.text());
  }
}
