package strikeoff.artwork;

import java.io.IOException;
import java.util.Arrays;

/** Runs of one byte, and bytes as they are (TIFF 6.0, section 9). */
final class PackBits implements Unpacking {

  /** A head that stands for nothing. */
  private static final int NOTHING = 128;

  private final Packed in;

  /** Bytes of the current run that weren't handed on yet. */
  private int left;

  private boolean repeated;
  private byte value;

  PackBits(Packed in) {
    this.in = in;
  }

  @Override
  public void begin() {
    left = 0;
  }

  @Override
  public int some(byte[] into, int from, int count) throws IOException {
    int got = 0;
    while (got < count && (left > 0 || run())) {
      int some = Math.min(left, count - got);
      left -= some;
      if (repeated) {
        Arrays.fill(into, from + got, from + got + some, value);
      } else {
        some = in.some(into, from + got, some);
      }
      got += some;
    }
    return got;
  }

  /** Goes to the next run; false if there is none. */
  private boolean run() throws IOException {
    int head = in.next();
    while (head == NOTHING) {
      head = in.next();
    }
    repeated = head > NOTHING;
    left = repeated ? 257 - head : head + 1;
    int next = repeated ? in.next() : head;
    value = (byte) next;
    return next >= 0;
  }
}
