package strikeoff.artwork;

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
    for (int i = 0; i < count; i++) {
      int x = first + i * step - alongMargin;
      if (x >= 0 && x < bits.columns()) {
        int tone = ink[i] & FULL;
        tones[tone]++;
        if (tone >= HALF) {
          bits.set(x, row);
        }
      }
    }
  }

  /** Points side by side: of a film, many in a row are alike. */
  private void row(int row, int first, byte[] ink, int count) {
    int end = Math.min(count, bits.columns() - first);
    for (int from = Math.max(0, -first); from < end; ) {
      byte tone = ink[from];
      int to = from + 1;
      while (to < end && ink[to] == tone) {
        to++;
      }
      tones[tone & FULL] += to - from;
      if ((tone & FULL) >= HALF) {
        bits.set(first + from, first + to, row);
      }
      from = to;
    }
  }

  @Override
  public void bits(int y, byte[] packed, int from, int prints) {
    int row = y - acrossMargin;
    if (row < 0 || row >= bits.rows()) {
      return;
    }
    bits.row(row, packed, from * Byte.SIZE + alongMargin, prints);
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
