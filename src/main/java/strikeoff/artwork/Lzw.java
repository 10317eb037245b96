package strikeoff.artwork;

import java.io.IOException;
import java.util.zip.DataFormatException;

/**
 * LZW as TIFF has it (TIFF 6.0, section 13): codes of 9 to 12 bits, the highest bit first, which
 * grow one code before they must.
 */
final class Lzw implements Unpacking {

  private static final int CLEAR = 256;
  private static final int END = 257;
  private static final int FIRST = 258;
  private static final int CODES = 4096;
  private static final int NARROWEST = 9;
  private static final int WIDEST = 12;
  private static final int NONE = -1;

  /** Of each code's string: the code of all but its last byte, that byte, and how long it is. */
  private final int[] before = new int[CODES];

  private final byte[] last = new byte[CODES];
  private final int[] length = new int[CODES];

  private final Packed in;
  private int buffer;
  private int bits;
  private int width;
  private int next;
  private int previous;
  private boolean old;
  private boolean ended;

  /** What the last code stands for, of which {@code from} bytes were handed on. */
  private final byte[] string = new byte[CODES];

  private int from;
  private int to;

  Lzw(Packed in) {
    this.in = in;
    for (int i = 0; i < CLEAR; i++) {
      last[i] = (byte) i;
      length[i] = 1;
    }
  }

  @Override
  public void begin() throws IOException {
    int one = in.next();
    int two = in.next();
    buffer = one << Byte.SIZE | two;
    bits = 2 * Byte.SIZE;
    ended = two < 0;
    // As files before TIFF 6.0 begin, with the lowest bit first.
    old = buffer == 1;
    from = 0;
    to = 0;
    clear();
  }

  private void clear() {
    width = NARROWEST;
    next = FIRST;
    previous = NONE;
  }

  @Override
  public int some(byte[] into, int start, int count) throws IOException, DataFormatException {
    if (old) {
      throw new DataFormatException();
    }
    int got = 0;
    while (got < count && (from < to || string())) {
      int some = Math.min(count - got, to - from);
      System.arraycopy(string, from, into, start + got, some);
      from += some;
      got += some;
    }
    return got;
  }

  /** Unpacks the next string; false at the end. */
  private boolean string() throws IOException, DataFormatException {
    int code = ended ? END : code();
    while (code == CLEAR) {
      clear();
      code = code();
    }
    ended = code == END;
    if (ended) {
      return false;
    }
    boolean known = code < next;
    if (!known && (code > next || previous == NONE)) {
      throw new DataFormatException();
    }
    int of = known ? code : previous;
    from = 0;
    to = length[of];
    for (int i = to - 1; i >= 0; i--) {
      string[i] = last[of];
      of = before[of];
    }
    if (!known) {
      string[to++] = string[0];
    }
    if (previous != NONE && next < CODES) {
      before[next] = previous;
      last[next] = string[0];
      length[next] = length[previous] + 1;
      next++;
      if (next + 1 == 1 << width && width < WIDEST) {
        width++;
      }
    }
    previous = code;
    return true;
  }

  /** The next code; after the last bit it is {@link #END}. */
  private int code() throws IOException {
    while (bits < width) {
      int next = in.next();
      if (next < 0) {
        return END;
      }
      buffer = buffer << Byte.SIZE | next;
      bits += Byte.SIZE;
    }
    bits -= width;
    return buffer >>> bits & (1 << width) - 1;
  }
}
