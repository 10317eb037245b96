package strikeoff.artwork;

import java.nio.ByteBuffer;
import java.util.Map;
import java.util.TreeMap;

/**
 * A TIFF file written byte by byte, so that it may say what no honest program writes: a picture all
 * of zero bits, in one strip unless told otherwise.
 */
final class TiffDrawn {

  static final int SHORT = 3;
  static final int LONG = 4;
  static final int RATIONAL = 5;

  private static final int HEAD = 8;
  private static final int ENTRY = 12;

  /** By tag: its type, how many values it says to have, and its number or where they lie. */
  private final Map<Integer, long[]> entries = new TreeMap<>();

  private int start = HEAD;
  private byte[] data;
  private int cut = Integer.MAX_VALUE;

  TiffDrawn(int columns, int rows) {
    set(TiffDirectory.COLUMNS, columns);
    set(TiffDirectory.ROWS, rows);
    set(TiffDirectory.DEPTH, 1);
    set(TiffDirectory.PACKING, 1);
    set(TiffDirectory.TONES, 1);
    set(TiffDirectory.CHANNELS, 1);
    set(TiffDirectory.STRIP_ROWS, rows);
    set(TiffDirectory.STRIP_STARTS, 0);
    long bytes = (columns + 7L) / 8 * rows;
    set(TiffDirectory.STRIP_BYTES, bytes);
    data = new byte[(int) Math.min(bytes, 1 << 24)];
  }

  /** A number of four bytes; of what must have two of them, of two. */
  TiffDrawn set(int tag, long number) {
    return says(tag, LONG, 1, number);
  }

  TiffDrawn without(int tag) {
    entries.remove(tag);
    return this;
  }

  /** Whatever one wants it to say. */
  TiffDrawn says(int tag, int type, long count, long value) {
    entries.put(tag, new long[] {type, count, value});
    return this;
  }

  TiffDrawn resolution(long above, long below, int unit) {
    entries.put(TiffDirectory.ALONG, new long[] {RATIONAL, 1, -1, above, below});
    entries.put(TiffDirectory.ACROSS, new long[] {RATIONAL, 1, -1, above, below});
    return set(TiffDirectory.UNIT, unit);
  }

  TiffDrawn directoryAt(int place) {
    start = place;
    return this;
  }

  TiffDrawn data(byte[] bytes) {
    data = bytes;
    return set(TiffDirectory.STRIP_BYTES, bytes.length);
  }

  TiffDrawn cutAfter(int bytes) {
    cut = bytes;
    return this;
  }

  Picture picture() throws Exception {
    return Drawn.picture(file());
  }

  byte[] file() {
    int end = HEAD + 2 + entries.size() * ENTRY + 4;
    int ratios = (int) entries.values().stream().filter(e -> e.length > 3).count();
    int strip = end + 8 * ratios;
    ByteBuffer file = ByteBuffer.allocate(strip + data.length);
    file.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(start);
    file.putShort((short) entries.size());
    int ratio = end;
    for (Map.Entry<Integer, long[]> entry : entries.entrySet()) {
      long[] says = entry.getValue();
      file.putShort((short) (int) entry.getKey()).putShort((short) says[0]).putInt((int) says[1]);
      if (says.length > 3) {
        file.putInt(ratio).putInt(ratio, (int) says[3]).putInt(ratio + 4, (int) says[4]);
        ratio += 8;
      } else {
        boolean isStart = entry.getKey() == TiffDirectory.STRIP_STARTS && says[2] == 0;
        file.putInt(isStart ? strip : (int) says[2]);
      }
    }
    // The next directory is the first one again.
    file.putInt(HEAD);
    System.arraycopy(data, 0, file.array(), strip, data.length);
    byte[] all = file.array();
    return cut < all.length ? java.util.Arrays.copyOf(all, cut) : all;
  }
}
