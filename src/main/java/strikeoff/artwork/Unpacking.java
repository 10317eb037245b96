package strikeoff.artwork;

import java.io.IOException;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Unpacks bytes bit by bit of what is packed, and tells where they end too early: the JDK's reader
 * of TIFF fills up what is missing, in silence.
 */
interface Unpacking extends AutoCloseable {

  /** Begins anew where the packed bytes are those of another strip. */
  default void begin() throws IOException {}

  /**
   * Unpacks the next bytes.
   *
   * @return how many there were; fewer than asked for at the end
   * @throws DataFormatException if they can't have been packed so
   */
  int some(byte[] into, int from, int count) throws IOException, DataFormatException;

  @Override
  default void close() {}

  /** As zlib packs (RFC 1950). */
  final class Deflate implements Unpacking {

    private static final int AT_ONCE = 1 << 16;

    private final Packed in;
    private final Inflater inflater = new Inflater();
    private final byte[] packed = new byte[AT_ONCE];

    Deflate(Packed in) {
      this.in = in;
    }

    @Override
    public void begin() {
      inflater.reset();
    }

    @Override
    public int some(byte[] into, int from, int count) throws IOException, DataFormatException {
      int got = 0;
      boolean more = true;
      while (more && got < count) {
        int some = inflater.inflate(into, from + got, count - got);
        got += some;
        if (some == 0) {
          int fed = inflater.needsInput() ? in.some(packed, 0, AT_ONCE) : 0;
          inflater.setInput(packed, 0, fed);
          more = fed > 0;
        }
      }
      return got;
    }

    @Override
    public void close() {
      inflater.end();
    }
  }
}
