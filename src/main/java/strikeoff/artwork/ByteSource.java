package strikeoff.artwork;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.zip.CRC32;

/** A file's bytes in order, with the check sum of those since a mark. */
final class ByteSource {

  private static final int AT_ONCE = 1 << 16;

  private final InputStream in;
  private final CRC32 sum = new CRC32();
  private final byte[] skipped = new byte[AT_ONCE];

  /** What was read for single bytes and wasn't handed on yet: from {@code at} to {@code end}. */
  private final byte[] ahead = new byte[AT_ONCE];

  private int at;
  private int end;

  ByteSource(InputStream in) {
    this.in = in;
  }

  void mark() {
    sum.reset();
  }

  /** Of all since the mark. */
  long sum() {
    return sum.getValue();
  }

  /** One byte, which no sum counts; -1 at the end. */
  int next() throws IOException {
    if (at == end) {
      at = 0;
      end = in.readNBytes(ahead, 0, AT_ONCE);
    }
    return at == end ? -1 : ahead[at++] & 0xff;
  }

  /** Four bytes, the highest first, without sign. */
  long four() throws IOException {
    return four(all(Integer.BYTES), 0);
  }

  /** The same from a place in bytes that were read. */
  static long four(byte[] bytes, int at) {
    return Integer.toUnsignedLong(ByteBuffer.wrap(bytes).getInt(at));
  }

  /**
   * So many bytes.
   *
   * @throws EOFException if there are fewer
   */
  byte[] all(int count) throws IOException {
    byte[] bytes = new byte[count];
    if (some(bytes, 0, count) < count) {
      throw new EOFException();
    }
    return bytes;
  }

  /** Fills a part of an array, as far as there is something. */
  int some(byte[] bytes, int from, int count) throws IOException {
    int known = Math.min(count, end - at);
    System.arraycopy(ahead, at, bytes, from, known);
    at += known;
    int read = known + in.readNBytes(bytes, from + known, count - known);
    sum.update(bytes, from, read);
    return read;
  }

  /**
   * Passes over so many bytes.
   *
   * @throws EOFException if there are fewer
   */
  void skip(long count) throws IOException {
    long left = count;
    while (left > 0) {
      int read = some(skipped, 0, (int) Math.min(left, AT_ONCE));
      if (read == 0) {
        throw new EOFException();
      }
      left -= read;
    }
  }
}
