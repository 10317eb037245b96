package strikeoff.artwork;

import java.util.Arrays;
import java.util.stream.LongStream;
import strikeoff.plan.Artwork.Tones;

/**
 * What a stencil takes from a picture: its points without the margin, each of them open or closed.
 * A point that is more than half of full paste is open.
 */
final class OpenPoints implements PointTaker {

  private static final int HALF = 128;
  private static final int FULL = 255;

  private final int alongMargin;
  private final int acrossMargin;
  private final Bits bits;
  private final long[] tones = new long[FULL + 1];

  /**
   * @param alongMargin points that are cut off left and right
   * @param acrossMargin points that are cut off above and below
   */
  OpenPoints(Picture picture, int alongMargin, int acrossMargin) {
    this.alongMargin = alongMargin;
    this.acrossMargin = acrossMargin;
    this.bits = new Bits(picture.columns() - 2 * alongMargin, picture.rows() - 2 * acrossMargin);
  }

  @Override
  public void row(int y, int first, int step, byte[] ink, int count) {
    int row = y - acrossMargin;
    if (row < 0 || row >= bits.rows()) {
      return;
    }
    if (step == 1) {
      row(row, first - alongMargin, ink, count);
      return;
    }
    int left = alongMargin - first;
    int from = left <= 0 ? 0 : (left + step - 1) / step;
    int end = Math.min(count, (left + bits.columns() + step - 1) / step);
    while (from < end) {
      int tone = ink[from] & FULL;
      int to = alike(ink, from, end);
      tones[tone] += to - from;
      if (tone >= HALF) {
        bits.setEach(from * step - left, step, to - from, row);
      }
      from = to;
    }
  }

  /** The next point after one that differs from it: of a film, many in a row are alike. */
  private static int alike(byte[] ink, int from, int end) {
    if (from + 1 < end && ink[from + 1] != ink[from]) {
      return from + 1;
    }
    int differs = Arrays.mismatch(ink, from + 1, end, ink, from, end - 1);
    return differs < 0 ? end : from + 1 + differs;
  }

  /** Points side by side. */
  private void row(int row, int first, byte[] ink, int count) {
    int end = Math.min(count, bits.columns() - first);
    int from = Math.max(0, -first);
    int open = end;
    while (from < end) {
      int tone = ink[from] & FULL;
      if (tone >= HALF) {
        open = Math.min(open, from);
      } else if (open < from) {
        bits.set(first + open, first + from, row);
        open = end;
      }
      int to = alike(ink, from, end);
      tones[tone] += to - from;
      from = to;
    }
    if (open < end) {
      bits.set(first + open, first + end, row);
    }
    bits.share(row);
  }

  @Override
  public void bits(int y, byte[] packed, int from, int prints) {
    int row = y - acrossMargin;
    if (row < 0 || row >= bits.rows()) {
      return;
    }
    bits.row(row, packed, from * Byte.SIZE + alongMargin, prints);
    bits.share(row);
    int open = bits.count(row);
    tones[FULL] += open;
    tones[0] += bits.columns() - open;
  }

  Bits bits() {
    return bits;
  }

  /** By whole percent. */
  Tones tones() {
    long[] percents = new long[101];
    for (int tone = 0; tone <= FULL; tone++) {
      percents[Math.round(tone * 100f / FULL)] += tones[tone];
    }
    return new Tones(LongStream.of(percents).boxed().toList());
  }
}
