package strikeoff.artwork;

import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * The chunks of a PNG file (ISO/IEC 15948, clause 5.3) and what is packed in those of its points.
 * Only chunks that are asked for are kept; text and profiles are passed over without unpacking.
 */
final class PngChunks implements AutoCloseable {

  private static final int AT_ONCE = 1 << 16;
  private static final long LONGEST = Integer.MAX_VALUE;

  /** Files of 64 MiB in parts of 1 KiB have fewer. */
  private static final int MOST_PARTS = 100_000;

  private final ByteSource in;
  private final Inflater inflater = new Inflater();
  private final byte[] packed = new byte[AT_ONCE];

  private String type = "";

  /** Bytes of the current chunk that weren't read yet. */
  private long left;

  /** True if the current chunk's bytes are made use of. */
  private boolean kept;

  private boolean more = true;

  private int parts;

  PngChunks(ByteSource in) {
    this.in = in;
  }

  /** Goes to the next chunk and tells its type; what is left of this one is passed over. */
  String next() throws IOException, UnreadablePicture {
    if (!type.isEmpty()) {
      pass();
    }
    if (++parts > MOST_PARTS) {
      throw new UnreadablePicture("this PNG file is in too many parts; save it again");
    }
    left = in.four();
    if (left > LONGEST) {
      throw new UnreadablePicture("this PNG file is damaged; save it again");
    }
    in.mark();
    type = new String(in.all(4), StandardCharsets.ISO_8859_1);
    return type;
  }

  /** The current chunk's bytes, of which there are at most so many. */
  byte[] bytes(int most) throws IOException, UnreadablePicture {
    if (left > most) {
      throw damaged();
    }
    byte[] bytes = in.all((int) left);
    left = 0;
    kept = true;
    return bytes;
  }

  private void pass() throws IOException, UnreadablePicture {
    in.skip(left);
    left = 0;
    long sum = in.sum();
    if (in.four() != sum && (kept || isNeeded())) {
      throw damaged();
    }
    kept = false;
  }

  /** True of chunks whose first letter is a capital: without them there is no picture. */
  boolean isNeeded() {
    return Character.isUpperCase(type.charAt(0));
  }

  private UnreadablePicture damaged() {
    return new UnreadablePicture(
        "the picture is damaged: its part “"
            + letters(type)
            + "” isn't as it was written; save it again");
  }

  private static String letters(String type) {
    return type.replaceAll("[^A-Za-z]", "?");
  }

  /**
   * Unpacks the next bytes of the picture's points, from this chunk and those of its type that
   * follow it.
   *
   * @return how many there were; fewer than asked for at the end
   */
  int unpack(byte[] bytes, int from, int count)
      throws IOException, DataFormatException, UnreadablePicture {
    int got = 0;
    while (got < count) {
      int some = inflater.inflate(bytes, from + got, count - got);
      got += some;
      if (some == 0) {
        if (inflater.finished() || inflater.needsDictionary() || !feed()) {
          break;
        }
      }
    }
    return got;
  }

  /** False if there is nothing more. */
  private boolean feed() throws IOException, UnreadablePicture {
    try {
      while (more && left == 0) {
        more = next().equals("IDAT");
      }
      int read = more ? in.some(packed, 0, (int) Math.min(left, packed.length)) : 0;
      left -= read;
      inflater.setInput(packed, 0, read);
      return read > 0;
    } catch (EOFException e) {
      return false;
    }
  }

  /** Checks what is left of the chunk in which the points end, if the file goes on so far. */
  void end() throws IOException, UnreadablePicture {
    try {
      if (more) {
        pass();
        type = "";
      }
    } catch (EOFException e) {
      // All points are there; what is cut off would tell nothing more.
      more = false;
    }
  }

  @Override
  public void close() {
    inflater.end();
  }
}
