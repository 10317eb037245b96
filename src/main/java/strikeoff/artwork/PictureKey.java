package strikeoff.artwork;

import strikeoff.plan.Artwork;
import strikeoff.units.Pair;

/** All that measures depend on: a picture, and how it is printed. */
record PictureKey(
    String bytes,
    Artwork.Tone prints,
    boolean wrong,
    int columns,
    int rows,
    int alongMargin,
    int acrossMargin,
    Pair size,
    boolean traced) {

  /** True of measures of a picture of that size. */
  boolean isOf(PictureMeasures measures) {
    return measures.columns() == columns - 2 * alongMargin
        && measures.rows() == rows - 2 * acrossMargin;
  }

  /** The same in words that no other has: numbers to the last bit. */
  String text() {
    return String.join(
        " ",
        bytes,
        prints.word(),
        Boolean.toString(wrong),
        Integer.toString(columns),
        Integer.toString(rows),
        Integer.toString(alongMargin),
        Integer.toString(acrossMargin),
        Double.toString(size.along().mm()),
        Double.toString(size.across().mm()),
        Boolean.toString(traced));
  }
}
