package strikeoff.artwork;

import java.io.IOException;
import java.util.Arrays;
import java.util.zip.DataFormatException;

/**
 * A fax's rows as TIFF has them (TIFF 6.0, sections 10 and 11): by runs alone, each row from a byte
 * on; by group 3 (ITU-T T.4), in one or two dimensions; and by group 4 (ITU-T T.6). A row is told
 * by where it changes between white, which it begins with, and black; so no more than two are held.
 * The JDK's reader holds a strip of any length whole, and leaves rows that it can't read white.
 */
final class Fax implements Unpacking {

  private static final int GROUP_3 = 3;
  private static final int GROUP_4 = 4;

  /** So many zeros begin no code: after them comes the one that ends them, and a row. */
  private static final int ZEROS = 11;

  private static final int LONGEST_CODE = 13;
  private static final int LONGEST_MODE = 7;

  /** White or black runs of 0 to 63 points (T.4, table 2). */
  private static final String WHITE =
      "00110101 000111 0111 1000 1011 1100 1110 1111 10011 10100 00111 01000 001000 000011 110100"
          + " 110101 101010 101011 0100111 0001100 0001000 0010111 0000011 0000100 0101000 0101011"
          + " 0010011 0100100 0011000 00000010 00000011 00011010 00011011 00010010 00010011 00010100"
          + " 00010101 00010110 00010111 00101000 00101001 00101010 00101011 00101100 00101101"
          + " 00000100 00000101 00001010 00001011 01010010 01010011 01010100 01010101 00100100"
          + " 00100101 01011000 01011001 01011010 01011011 01001010 01001011 00110010 00110011"
          + " 00110100";

  private static final String BLACK =
      "0000110111 010 11 10 011 0011 0010 00011 000101 000100 0000100 0000101 0000111 00000100"
          + " 00000111 000011000 0000010111 0000011000 0000001000 00001100111 00001101000 00001101100"
          + " 00000110111 00000101000 00000010111 00000011000 000011001010 000011001011 000011001100"
          + " 000011001101 000001101000 000001101001 000001101010 000001101011 000011010010"
          + " 000011010011 000011010100 000011010101 000011010110 000011010111 000001101100"
          + " 000001101101 000011011010 000011011011 000001010100 000001010101 000001010110"
          + " 000001010111 000001100100 000001100101 000001010010 000001010011 000000100100"
          + " 000000110111 000000111000 000000100111 000000101000 000001011000 000001011001"
          + " 000000101011 000000101100 000001011010 000001100110 000001100111";

  /** What comes before them, of 64 points and multiples (table 3a). */
  private static final String WHITE_64 =
      " 11011 10010 010111 0110111 00110110 00110111 01100100 01100101 01101000 01100111 011001100"
          + " 011001101 011010010 011010011 011010100 011010101 011010110 011010111 011011000"
          + " 011011001 011011010 011011011 010011000 010011001 010011010 011000 010011011";

  private static final String BLACK_64 =
      " 0000001111 000011001000 000011001001 000001011011 000000110011 000000110100 000000110101"
          + " 0000001101100 0000001101101 0000001001010 0000001001011 0000001001100 0000001001101"
          + " 0000001110010 0000001110011 0000001110100 0000001110101 0000001110110 0000001110111"
          + " 0000001010010 0000001010011 0000001010100 0000001010101 0000001011010 0000001011011"
          + " 0000001100100 0000001100101";

  /** The same of both colours, from 1792 points on (table 3b). */
  private static final String BOTH_64 =
      " 00000001000 00000001100 00000001101 000000010010 000000010011 000000010100 000000010101"
          + " 000000010110 000000010111 000000011100 000000011101 000000011110 000000011111";

  /**
   * How a row follows the one above (T.4, table 4): a change lies where that has one, or up to
   * three points left or right of it; two runs in a row follow; or that has a run more.
   */
  private static final String MODES = "0000010 000010 010 1 011 000011 0000011 001 0001";

  private static final int SAME_PLACE = 3;
  private static final int RUNS = 7;
  private static final int PASS = 8;

  private static final int[] WHITES = table(LONGEST_CODE, WHITE + WHITE_64 + BOTH_64);
  private static final int[] BLACKS = table(LONGEST_CODE, BLACK + BLACK_64 + BOTH_64);
  private static final int[] HOW = table(LONGEST_MODE, MODES);
  private static final int NO_CODE = -1;

  private final Packed in;
  private final int columns;
  private final int packing;
  private final boolean twoWays;

  private int buffer;
  private int bits;

  /** Bits of the buffer that the strip no longer has: zeros after its end. */
  private int beyond;

  /** Where this row and the one above change; after the last place, nothing but the row's end. */
  private int[] changes;

  private int[] above;
  private int count;

  /**
   * @param packing 2 for runs alone, else the fax's group
   * @param twoWays true of a group 3 in which rows may follow the row above
   */
  Fax(Packed in, int columns, int packing, boolean twoWays) {
    this.in = in;
    this.columns = columns;
    this.packing = packing;
    this.twoWays = twoWays;
    // Three ends follow the last change.
    this.changes = new int[columns + 4];
    this.above = new int[columns + 4];
  }

  /** By as many bits as the longest code has: which code they begin with, and how long it is. */
  private static int[] table(int longest, String codes) {
    int[] table = new int[1 << longest];
    Arrays.fill(table, NO_CODE);
    String[] each = codes.split(" ");
    for (int i = 0; i < each.length; i++) {
      int rest = longest - each[i].length();
      int first = Integer.parseInt(each[i], 2) << rest;
      Arrays.fill(table, first, first + (1 << rest), i << Byte.SIZE | each[i].length());
    }
    return table;
  }

  @Override
  public void begin() {
    bits = 0;
    beyond = 0;
    count = 0;
    end();
  }

  @Override
  public int some(byte[] into, int from, int bytes) throws IOException, DataFormatException {
    int rowBytes = (columns + Byte.SIZE - 1) / Byte.SIZE;
    int got = 0;
    while (got < bytes && row()) {
      Arrays.fill(into, from + got, from + got + rowBytes, (byte) 0);
      for (int i = 0; i < count; i += 2) {
        blacken(into, (from + got) * Byte.SIZE, changes[i], changes[i + 1]);
      }
      got += rowBytes;
    }
    return got;
  }

  private static void blacken(byte[] into, int zero, int first, int end) {
    int from = zero + first;
    int to = zero + end;
    if (from >> 3 == to >> 3) {
      into[from >> 3] |= (byte) ((0xff >> (from & 7)) & ~(0xff >> (to & 7)));
    } else {
      into[from >> 3] |= (byte) (0xff >> (from & 7));
      Arrays.fill(into, (from >> 3) + 1, to >> 3, (byte) 0xff);
      if ((to & 7) > 0) {
        into[to >> 3] |= (byte) ~(0xff >> (to & 7));
      }
    }
  }

  /** Reads the next row; false if there is none. */
  private boolean row() throws IOException, DataFormatException {
    int[] spare = above;
    above = changes;
    changes = spare;
    count = 0;
    boolean follows = packing == GROUP_4;
    boolean ended = false;
    if (packing == GROUP_3) {
      boolean begun = skipZeros();
      if (twoWays && !begun && beyond < bits) {
        throw new DataFormatException();
      }
      follows = begun && twoWays && take(1) == 0;
      ended = begun && !follows && peek(ZEROS) == 0 && peek(ZEROS + 1) == 1;
    } else if (packing == GROUP_4) {
      ended = peek(ZEROS + 1) == 1;
    } else {
      bits -= bits % Byte.SIZE;
    }
    if (ended || !(follows ? follow() : runs())) {
      return false;
    }
    end();
    return true;
  }

  private void end() {
    count -= count > 0 && changes[count - 1] == columns ? 1 : 0;
    Arrays.fill(changes, count, Math.min(count + 4, changes.length), columns);
  }

  /** Passes over what stands before a row of group 3, if it does: some leave it out. */
  private boolean skipZeros() throws IOException {
    if (peek(ZEROS) != 0) {
      return false;
    }
    while (beyond == 0 && peek(Byte.SIZE) == 0) {
      bits -= Byte.SIZE;
    }
    while (beyond < bits && peek(1) == 0) {
      bits--;
    }
    return take(1) == 1;
  }

  /** A row of white and black runs in turn; false if the strip ends in it. */
  private boolean runs() throws IOException, DataFormatException {
    int at = 0;
    for (boolean black = false; at < columns; black = !black) {
      int run = run(black);
      if (run < 0) {
        return false;
      }
      at = change(at, at + run);
    }
    return true;
  }

  /** A row that follows the one above; false if the strip ends in it. */
  private boolean follow() throws IOException, DataFormatException {
    int at = 0;
    int next = 0;
    boolean black = false;
    while (at < columns) {
      // The first change above to the right of here that goes to the other colour.
      next = next > 0 ? next - 1 : 0;
      next += (next & 1) == (black ? 1 : 0) ? 0 : 1;
      while (above[next] < columns && (above[next] < at || above[next] == at && at > 0)) {
        next += 2;
      }
      int mode = code(HOW, LONGEST_MODE);
      if (mode < 0) {
        return false;
      }
      if (mode == PASS) {
        at = above[next] < columns ? above[next + 1] : columns;
      } else if (mode == RUNS) {
        int one = run(black);
        int other = one < 0 ? one : run(!black);
        if (other < 0) {
          return false;
        }
        at = change(at, at + one);
        at = change(at, at + other);
      } else {
        at = change(at, above[next] + mode - SAME_PLACE);
        black = !black;
      }
    }
    return true;
  }

  /** Notes a change of colour; two in one place are none. */
  private int change(int before, int place) throws DataFormatException {
    if (place < before || place > columns) {
      throw new DataFormatException();
    }
    if (count > 0 && changes[count - 1] == place) {
      count--;
    } else {
      changes[count++] = place;
    }
    return place;
  }

  /** The length of a run; less than 0 if the strip ends in it. */
  private int run(boolean black) throws IOException, DataFormatException {
    int run = 0;
    int code;
    do {
      code = code(black ? BLACKS : WHITES, LONGEST_CODE);
      run += code < 64 ? code : (code - 63) * 64;
      if (run > columns) {
        throw new DataFormatException();
      }
    } while (code >= 64);
    return code < 0 ? code : run;
  }

  /** Which of a table's codes comes next; less than 0 if the strip ends before it does. */
  private int code(int[] table, int longest) throws IOException, DataFormatException {
    int code = table[peek(longest)];
    if (code == NO_CODE && beyond == 0) {
      throw new DataFormatException();
    }
    if (code != NO_CODE) {
      bits -= code & 0xff;
    }
    return bits < beyond ? NO_CODE : code >> Byte.SIZE;
  }

  /** The next bits, which stay. */
  private int peek(int wanted) throws IOException {
    while (bits < wanted) {
      int next = in.next();
      beyond += next < 0 ? Byte.SIZE : 0;
      buffer = buffer << Byte.SIZE | Math.max(0, next);
      bits += Byte.SIZE;
    }
    return buffer >>> bits - wanted & (1 << wanted) - 1;
  }

  private int take(int wanted) throws IOException {
    int taken = peek(wanted);
    bits -= wanted;
    return taken;
  }
}
