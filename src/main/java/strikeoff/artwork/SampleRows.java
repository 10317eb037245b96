package strikeoff.artwork;

import java.util.Optional;
import strikeoff.plan.Artwork.Tone;

/** Hands on rows of a picture's samples: bits as they are where they are plain, else as paste. */
final class SampleRows {

  private final PngSamples samples;
  private final Tone prints;
  private final PointTaker points;
  private final Optional<Integer> plain;
  private final int[] inks;
  private final byte[] ink;

  /**
   * @param longest how many points a row has at most
   * @param whole true if each row holds all points of a row of the picture
   * @param prints which tone counts as paste
   */
  SampleRows(PngSamples samples, int longest, boolean whole, Tone prints, PointTaker points) {
    this.samples = samples;
    this.prints = prints;
    this.points = points;
    this.plain = whole ? samples.plainBit(prints) : Optional.empty();
    this.inks = samples.depth() <= Byte.SIZE ? samples.table(prints) : new int[0];
    this.ink = new byte[plain.isPresent() ? 0 : longest];
  }

  /**
   * Hands a row on.
   *
   * @param first column of the first of its points
   * @param step from one column to the next
   * @param row holds its samples, from {@code from} on
   * @param count how many points there are
   * @throws UnreadablePicture if a sample is a colour that the palette lacks
   */
  void row(int y, int first, int step, byte[] row, int from, int count) throws UnreadablePicture {
    if (plain.isPresent()) {
      points.bits(y, row, from, plain.get());
    } else {
      samples.inks(row, from, count, inks, prints, ink);
      points.row(y, first, step, ink, count);
    }
  }
}
