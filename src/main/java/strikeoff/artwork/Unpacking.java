package strikeoff.artwork;

import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Unpacks bytes bit by bit of what is packed, and tells where they end too early: the JDK's reader
 * of TIFF fills up what is missing, in silence.
 */
interface Unpacking extends AutoCloseable {

  /** Goes on with other packed bytes, from their beginning. */
  void begin(byte[] packed, int from, int count);

  /**
   * Unpacks the next bytes.
   *
   * @return how many there were; fewer than asked for at the end
   * @throws DataFormatException if they can't have been packed so
   */
  int some(byte[] into, int from, int count) throws DataFormatException;

  @Override
  default void close() {}

  /** As zlib packs (RFC 1950). */
  final class Deflate implements Unpacking {

    private final Inflater inflater = new Inflater();

    @Override
    public void begin(byte[] packed, int from, int count) {
      inflater.reset();
      inflater.setInput(packed, from, count);
    }

    @Override
    public int some(byte[] into, int from, int count) throws DataFormatException {
      int got = 0;
      for (int more = -1; more != 0 && got < count; got += more) {
        more = inflater.inflate(into, from + got, count - got);
      }
      return got;
    }

    @Override
    public void close() {
      inflater.end();
    }
  }
}
