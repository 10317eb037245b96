package strikeoff.artwork;

import java.util.Arrays;
import java.util.BitSet;

/**
 * A raster of one bit a point, set where paste goes, 64 points of a row in a word. Rows without any
 * take no room, nor do those that are as the one above: films have many, and one that is refused
 * early has hardly others.
 */
final class Bits {

  private final int columns;
  private final int rows;
  private final int wordsPerRow;
  private final long[][] words;

  /** Of all rows without any, and never written. */
  private final long[] none;

  /** Rows whose words are those of others too, and to be copied before they are written. */
  private final BitSet shared = new BitSet();

  Bits(int columns, int rows) {
    this.columns = columns;
    this.rows = rows;
    this.wordsPerRow = (columns + Long.SIZE - 1) >> 6;
    this.none = new long[wordsPerRow];
    this.words = new long[rows][];
    Arrays.fill(words, none);
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  /** False outside. */
  boolean get(int x, int y) {
    return x >= 0 && y >= 0 && x < columns && y < rows && (words[y][x >> 6] >> (x & 63) & 1) != 0;
  }

  /** A row's words, to be written. */
  private long[] own(int y) {
    if (words[y] == none) {
      words[y] = new long[wordsPerRow];
    } else if (shared.get(y)) {
      words[y] = words[y].clone();
      shared.clear(y);
    }
    return words[y];
  }

  /** Keeps a row with the one above if they are alike. */
  void share(int y) {
    if (y > 0 && Arrays.equals(words[y], words[y - 1])) {
      words[y] = words[y - 1];
      shared.set(y - 1, y + 1);
    }
  }

  void set(int x, int y) {
    own(y)[x >> 6] |= 1L << (x & 63);
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
    long[] row = none;
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
      if (turned != 0) {
        row = row == none ? own(y) : row;
        row[x >> 6] |= turned << (x & 63);
      }
    }
  }

  /** Sets what is set in one of the same grid. */
  void add(Bits other) {
    for (int y = 0; y < rows; y++) {
      if (other.words[y] != other.none) {
        long[] row = own(y);
        for (int i = 0; i < wordsPerRow; i++) {
          row[i] |= other.words[y][i];
        }
      }
    }
  }

  /** The same on another grid, point by the nearest point; itself on its own. */
  Bits on(int toColumns, int toRows) {
    if (toColumns == columns && toRows == rows) {
      return this;
    }
    Bits to = new Bits(toColumns, toRows);
    int before = -1;
    for (int y = 0; y < toRows; y++) {
      int from = (int) ((2L * y + 1) * rows / (2L * toRows));
      if (from == before) {
        to.words[y] = to.words[y - 1];
        to.share(y);
      } else {
        for (int x = next(0, from, true); x < columns; ) {
          int end = next(x, from, false);
          to.set(first(x, toColumns), first(end, toColumns), y);
          x = end < columns ? next(end, from, true) : columns;
        }
      }
      before = from;
    }
    return to;
  }

  /**
   * The same laid on another grid, point by the nearest point; what lies beyond is cut off.
   *
   * @param left where its left edge lies, in columns of that grid
   * @param top where its first row begins, in rows of that
   * @param along how many columns of that one of its own takes
   * @param across how many rows of that one of its own takes
   */
  Bits laid(int toColumns, int toRows, double left, double top, double along, double across) {
    Bits to = new Bits(toColumns, toRows);
    for (int y = 0; y < toRows; y++) {
      int from = (int) Math.floor((y + 0.5 - top) / across);
      for (int x = from < 0 || from >= rows ? columns : next(0, from, true); x < columns; ) {
        int end = next(x, from, false);
        int first = (int) Math.max(0, Math.ceil(left + x * along - 0.5));
        int last = (int) Math.min(toColumns, Math.ceil(left + end * along - 0.5));
        if (first < last) {
          to.set(first, last, y);
        }
        x = end < columns ? next(end, from, true) : columns;
      }
    }
    return to;
  }

  /** The first column of so many whose middle lies at a column of these or further on. */
  private int first(int column, int toColumns) {
    return (int) -Math.floorDiv(columns - 2L * toColumns * column, 2L * columns);
  }

  /** Sets a part of a row. */
  void set(int first, int end, int y) {
    long[] row = own(y);
    for (int word = first >> 6; word << 6 < end; word++) {
      long some = -1L;
      if (word == first >> 6) {
        some &= -1L << (first & 63);
      }
      if (end - (word << 6) < Long.SIZE) {
        some &= (1L << end - (word << 6)) - 1;
      }
      row[word] |= some;
    }
  }

  /**
   * Sets points of a row that stand as far apart.
   *
   * @param first column of the first of them
   * @param step from one to the next
   * @param count how many there are, at least one
   */
  void setEach(int first, int step, int count, int y) {
    long[] row = own(y);
    int x = first;
    for (int i = 0; i < count; i++, x += step) {
      row[x >> 6] |= 1L << (x & 63);
    }
  }

  /** How many are set. */
  long count() {
    long count = 0;
    for (int y = 0; y < rows; y++) {
      count += count(y);
    }
    return count;
  }

  /** How many runs all rows have together. */
  long runs() {
    long runs = 0;
    for (int y = 0; y < rows; y++) {
      runs += runs(y);
    }
    return runs;
  }

  /** How many runs a row has. */
  int runs(int y) {
    int runs = 0;
    if (words[y] != none) {
      long before = 0;
      for (long word : words[y]) {
        runs += Long.bitCount(word & ~(word << 1 | before));
        before = word >>> Long.SIZE - 1;
      }
    }
    return runs;
  }

  /** The 64 points of a row from a column on; nothing is set outside. */
  long from(int column, int y) {
    return y < 0 || y >= rows || column <= -Long.SIZE || column >= columns
        ? 0
        : bitsFrom(y, column);
  }

  /** How many runs all columns have together. */
  long runsAcross() {
    long runs = 0;
    for (int y = 0; y < rows; y++) {
      runs += runsAcross(y);
    }
    return runs;
  }

  /** How many runs of columns begin in a row. */
  int runsAcross(int y) {
    int runs = 0;
    long[] above = y == 0 ? none : words[y - 1];
    for (int i = 0; i < wordsPerRow && words[y] != none && words[y] != above; i++) {
      runs += Long.bitCount(words[y][i] & ~above[i]);
    }
    return runs;
  }

  /** How many are set in a part of a row. */
  int count(int first, int end, int y) {
    int count = 0;
    for (int word = first >> 6; word << 6 < end; word++) {
      long some = words[y][word];
      if (word == first >> 6) {
        some &= -1L << (first & 63);
      }
      if (end - (word << 6) < Long.SIZE) {
        some &= (1L << end - (word << 6)) - 1;
      }
      count += Long.bitCount(some);
    }
    return count;
  }

  /** How many are set in a row. */
  int count(int y) {
    int count = 0;
    if (words[y] != none) {
      for (long word : words[y]) {
        count += Long.bitCount(word);
      }
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
        long word = words[y][i];
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

  /** The next column from there on that is set, or isn't; the number of columns if none is. */
  int next(int from, int y, boolean set) {
    long flip = set ? 0 : -1;
    long[] row = words[y];
    if (set && row == none) {
      return columns;
    }
    for (int word = from >> 6; word < wordsPerRow; word++) {
      long some = row[word] ^ flip;
      if (word == from >> 6) {
        some &= -1L << (from & 63);
      }
      if (some != 0) {
        return Math.min(columns, (word << 6) + Long.numberOfTrailingZeros(some));
      }
    }
    return columns;
  }

  /** The next column after one that differs from it; the number of columns if none does. */
  int change(int from, int y) {
    return next(from, y, !get(from, y));
  }

  /** The same seen from its back. */
  Bits mirrored() {
    Bits mirrored = new Bits(columns, rows);
    for (int y = 0; y < rows; y++) {
      for (int word = 0; word < wordsPerRow && words[y] != none; word++) {
        mirrored.own(y)[word] = mirrored(y, word);
      }
    }
    return mirrored;
  }

  /**
   * Sixty-four columns as rows, or those that are left.
   *
   * @param first the first of them, at the beginning of a word
   */
  Bits turned(int first) {
    int word = first >> 6;
    Bits turned = new Bits(rows, Math.min(Long.SIZE, columns - first));
    long[] block = new long[Long.SIZE];
    for (int y = 0; y < rows; y += Long.SIZE) {
      long any = 0;
      for (int i = 0; i < Long.SIZE; i++) {
        block[i] = y + i < rows ? words[y + i][word] : 0;
        any |= block[i];
      }
      if (any != 0) {
        turn(block);
        for (int i = 0; i < turned.rows; i++) {
          if (block[i] != 0) {
            turned.own(i)[y >> 6] = block[i];
          }
        }
      }
    }
    return turned;
  }

  /** Turns a square of 64 by 64 over its diagonal, halves first (Warren, Hacker's Delight, 7-3). */
  private static void turn(long[] block) {
    long mask = 0x00000000ffffffffL;
    for (int half = 32; half != 0; half >>= 1, mask ^= mask << half) {
      for (int k = 0; k < Long.SIZE; k = (k + half + 1) & ~half) {
        long swap = (block[k] >>> half ^ block[k + half]) & mask;
        block[k] ^= swap << half;
        block[k + half] ^= swap;
      }
    }
  }

  /** How much of this and its mirror image, left for right, is set in one of them alone. */
  double mirrorApart() {
    long one = 0;
    long any = 0;
    for (int y = 0; y < rows; y++) {
      for (int word = 0; word < wordsPerRow && words[y] != none; word++) {
        long here = words[y][word];
        long mirrored = mirrored(y, word);
        one += Long.bitCount(here ^ mirrored);
        any += Long.bitCount(here | mirrored);
      }
    }
    return any == 0 ? 0 : (double) one / any;
  }

  /** A word of a row's mirror image. What lies beyond the row is nothing in both. */
  private long mirrored(int y, int word) {
    return Long.reverse(bitsFrom(y, columns - ((word + 1) << 6)));
  }

  /** The 64 points of a row from a column on, which may lie before its first one. */
  private long bitsFrom(int y, int column) {
    if (column < 0) {
      return words[y][0] << -column;
    }
    long[] row = words[y];
    int at = column >> 6;
    int shift = column & 63;
    long low = row[at] >>> shift;
    boolean more = shift > 0 && at + 1 < wordsPerRow;
    return more ? low | row[at + 1] << Long.SIZE - shift : low;
  }
}
