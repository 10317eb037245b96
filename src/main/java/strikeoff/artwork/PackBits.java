package strikeoff.artwork;

import java.util.Arrays;

/** Runs of one byte, and bytes as they are (TIFF 6.0, section 9). */
final class PackBits implements Unpacking {

  /** A head that stands for nothing. */
  private static final int NOTHING = -128;

  private byte[] packed = {};
  private int at;
  private int end;

  /** Bytes of the current run that weren't handed on yet. */
  private int left;

  private boolean repeated;
  private byte value;

  @Override
  public void begin(byte[] bytes, int from, int count) {
    packed = bytes;
    at = from;
    end = from + count;
    left = 0;
  }

  @Override
  public int some(byte[] into, int from, int count) {
    int got = 0;
    while (got < count && (left > 0 || run())) {
      int some = Math.min(left, count - got);
      if (repeated) {
        Arrays.fill(into, from + got, from + got + some, value);
      } else {
        System.arraycopy(packed, at, into, from + got, some);
        at += some;
      }
      left -= some;
      got += some;
    }
    return got;
  }

  /** Goes to the next run; false if there is none. */
  private boolean run() {
    int head = NOTHING;
    while (head == NOTHING && at < end) {
      head = packed[at++];
    }
    if (head == NOTHING || at == end) {
      return false;
    }
    repeated = head < 0;
    left = repeated ? 1 - head : Math.min(head + 1, end - at);
    if (repeated) {
      value = packed[at++];
    }
    return true;
  }
}
