package strikeoff.artwork;

import java.io.IOException;

/** The packed bytes of one strip after the other, of which a small part is held at a time. */
final class Packed {

  private static final int AT_ONCE = 1 << 16;

  private final FilmParts file;
  private final boolean lowFirst;
  private final byte[] held = new byte[AT_ONCE];
  private int at;
  private int end;

  /** Of the strip, what wasn't taken from the file yet. */
  private long place;

  private long left;

  /**
   * @param lowFirst true if the first point of a byte stands in its lowest bit
   */
  Packed(FilmParts file, boolean lowFirst) {
    this.file = file;
    this.lowFirst = lowFirst;
  }

  /** Goes to a strip, which lies within the file. */
  void begin(long start, long count) {
    place = start;
    left = count;
    at = 0;
    end = 0;
  }

  /** The next byte without sign; -1 at the end of the strip. */
  int next() throws IOException {
    return at == end && !more() ? -1 : held[at++] & 0xff;
  }

  /**
   * Hands on bytes as they are.
   *
   * @return how many there were; fewer than asked for at the end of the strip
   */
  int some(byte[] into, int from, int count) throws IOException {
    int got = 0;
    while (got < count && (at < end || more())) {
      int some = Math.min(count - got, end - at);
      System.arraycopy(held, at, into, from + got, some);
      at += some;
      got += some;
    }
    return got;
  }

  private boolean more() throws IOException {
    int some = (int) Math.min(left, AT_ONCE);
    file.read(place, held, 0, some);
    for (int i = 0; lowFirst && i < some; i++) {
      held[i] = (byte) (Integer.reverse(held[i]) >>> Integer.SIZE - Byte.SIZE);
    }
    place += some;
    left -= some;
    at = 0;
    end = some;
    return some > 0;
  }
}
