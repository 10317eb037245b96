package strikeoff.artwork;

/** A raster of one bit a point, set where paste goes, 64 points of a row in a word. */
final class Bits {

  private final int columns;
  private final int rows;
  private final int wordsPerRow;
  private final long[] words;

  Bits(int columns, int rows) {
    this.columns = columns;
    this.rows = rows;
    this.wordsPerRow = (columns + Long.SIZE - 1) >> 6;
    this.words = new long[Math.multiplyExact(wordsPerRow, rows)];
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  /** False outside. */
  boolean get(int x, int y) {
    return x >= 0
        && y >= 0
        && x < columns
        && y < rows
        && (words[y * wordsPerRow + (x >> 6)] >> (x & 63) & 1) != 0;
  }

  void set(int x, int y) {
    words[y * wordsPerRow + (x >> 6)] |= 1L << (x & 63);
  }

  /**
   * Sets a whole row from packed bits, the first point in the highest bit.
   *
   * @param bit where the row's first point stands
   * @param prints the bit that takes paste
   */
  void row(int y, byte[] packed, int bit, int prints) {
    int shift = bit & 7;
    int flip = prints == 1 ? 0 : 0xff;
    for (int x = 0; x < columns; x += Byte.SIZE) {
      int at = (bit + x) >> 3;
      int eight = (packed[at] & 0xff) << shift;
      if (shift > 0 && at + 1 < packed.length) {
        eight |= (packed[at + 1] & 0xff) >> Byte.SIZE - shift;
      }
      long turned = Integer.reverse((eight ^ flip) & 0xff) >>> Integer.SIZE - Byte.SIZE;
      if (x + Byte.SIZE > columns) {
        turned &= (1L << columns - x) - 1;
      }
      words[y * wordsPerRow + (x >> 6)] |= turned << (x & 63);
    }
  }

  /** How many are set. */
  long count() {
    long count = 0;
    for (long word : words) {
      count += Long.bitCount(word);
    }
    return count;
  }

  /** How many are set in a row. */
  int count(int y) {
    int count = 0;
    for (int i = y * wordsPerRow; i < (y + 1) * wordsPerRow; i++) {
      count += Long.bitCount(words[i]);
    }
    return count;
  }

  /**
   * The rectangle around all that is set: first column, first row, and those after the last ones;
   * all zero if nothing is.
   */
  int[] around() {
    long[] any = new long[wordsPerRow];
    int first = -1;
    int last = -1;
    for (int y = 0; y < rows; y++) {
      long set = 0;
      for (int i = 0; i < wordsPerRow; i++) {
        long word = words[y * wordsPerRow + i];
        any[i] |= word;
        set |= word;
      }
      if (set != 0) {
        first = first < 0 ? y : first;
        last = y;
      }
    }
    if (first < 0) {
      return new int[4];
    }
    int left = 0;
    while (any[left] == 0) {
      left++;
    }
    int right = wordsPerRow - 1;
    while (any[right] == 0) {
      right--;
    }
    return new int[] {
      (left << 6) + Long.numberOfTrailingZeros(any[left]),
      first,
      (right << 6) + Long.SIZE - Long.numberOfLeadingZeros(any[right]),
      last + 1
    };
  }
}
