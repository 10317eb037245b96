package strikeoff.artwork;

import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.DataFormatException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageInputStreamImpl;

/**
 * The strips of a TIFF picture, unpacked some rows at a time. A fax the JDK unpacks, a few strips
 * at a time, out of a small file that is made for it: its directory is our own and says where these
 * strips lie and nothing else, so that nothing that a stranger's directory claims ever reaches it.
 */
final class TiffStrips implements AutoCloseable {

  private static final int NOT_PACKED = 1;
  private static final int LZW = 5;
  private static final int DEFLATE = 8;
  private static final int PACK_BITS = 32773;
  private static final int DEFLATE_OLD = 32946;

  /** By rows, and by groups 3 and 4. */
  static final Set<Integer> FAX = Set.of(2, 3, 4);

  /** None, fax, LZW, deflate by two numbers, and PackBits. */
  static final Set<Integer> PACKINGS =
      Set.of(NOT_PACKED, 2, 3, 4, LZW, DEFLATE, DEFLATE_OLD, PACK_BITS);

  /** Packing makes noise longer by half at most, and short strips by a few bytes. */
  private static final int LONGER_BY = 2;

  private static final int FEW_BYTES = 1024;

  /** Strips are unpacked together up to so many bytes. */
  private static final int AT_ONCE = 1 << 20;

  private static final int HEAD = 8;
  private static final int ENTRY = 12;
  private static final int SHORT = 3;
  private static final int LONG = 4;

  /** What the JDK passes over unless it has two bytes. */
  private static final Set<Integer> SHORTS =
      Set.of(
          TiffDirectory.DEPTH, TiffDirectory.PACKING, TiffDirectory.TONES, TiffDirectory.CHANNELS);

  private final byte[] file;
  private final int packing;
  private final boolean lowFirst;
  private final int group3;
  private final int group4;
  private final int columns;
  private final int rowBytes;
  private final int rows;
  private final int rowsPerStrip;
  private final long[] starts;
  private final long[] sizes;

  /** Of the strip that is being unpacked; a fax is by the JDK. */
  private final Unpacking unpacking;

  /**
   * Looks at where strips lie.
   *
   * @param file the whole of it
   * @param columns points of a row of one bit each, else bits of an unpacked row
   */
  TiffStrips(byte[] file, TiffDirectory directory, int rows, int columns) throws UnreadablePicture {
    this.file = file;
    int says = (int) directory.number(TiffDirectory.PACKING, NOT_PACKED);
    this.packing = says == DEFLATE_OLD ? DEFLATE : says;
    this.lowFirst = directory.number(TiffDirectory.FILL_ORDER, 1) == 2;
    this.group3 = (int) directory.number(TiffDirectory.GROUP_3, 0);
    this.group4 = (int) directory.number(TiffDirectory.GROUP_4, 0);
    this.rows = rows;
    this.columns = columns;
    this.rowBytes = (columns + Byte.SIZE - 1) / Byte.SIZE;
    this.rowsPerStrip =
        (int) Math.max(1, Math.min(rows, directory.number(TiffDirectory.STRIP_ROWS, rows)));
    int strips = (rows + rowsPerStrip - 1) / rowsPerStrip;
    this.starts = directory.numbers(TiffDirectory.STRIP_STARTS, strips, strips);
    // Where one strip is all there is, some leave out how long it is.
    this.sizes =
        strips == 1 && packing == NOT_PACKED && !directory.has(TiffDirectory.STRIP_BYTES)
            ? new long[] {(long) rows * rowBytes}
            : directory.numbers(TiffDirectory.STRIP_BYTES, strips, strips);
    long whole = 0;
    for (int i = 0; i < strips && packing != NOT_PACKED; i++) {
      whole += starts[i] + sizes[i] > file.length ? 0 : sizes[i];
    }
    if (whole > file.length) {
      throw new UnreadablePicture(
          "the strips of this TIFF file lie over each other; save it again");
    }
    long most = LONGER_BY * ((long) rows * rowBytes) + (long) strips * FEW_BYTES;
    if (whole > most) {
      throw new UnreadablePicture(
          "the strips of this TIFF file are far longer than what is packed in them; save it again");
    }
    this.unpacking =
        switch (packing) {
          case LZW -> new Lzw();
          case PACK_BITS -> new PackBits();
          default -> new Unpacking.Deflate();
        };
  }

  /**
   * Some whole rows, unpacked, from the beginning of a strip on or from where the last ones ended.
   *
   * @throws UnreadablePicture if the file ends before, or is damaged
   */
  byte[] rowsFrom(int y) throws UnreadablePicture {
    int strip = y / rowsPerStrip;
    int least = Math.max(1, AT_ONCE / rowBytes);
    if (packing == NOT_PACKED) {
      int count = Math.min(least, rowsIn(strip) - y % rowsPerStrip);
      long start = starts[strip] + (long) (y % rowsPerStrip) * rowBytes;
      long left = Math.min(file.length, starts[strip] + sizes[strip]) - start;
      if (left < (long) count * rowBytes) {
        throw UnreadablePicture.ends(y + (int) Math.max(0, left / rowBytes), rows);
      }
      return bits(start, count * rowBytes);
    }
    if (!FAX.contains(packing)) {
      return unpacked(strip, y, Math.min(least, rowsIn(strip) - y % rowsPerStrip));
    }
    int strips = Math.max(1, Math.min(least / rowsPerStrip, starts.length - strip));
    int count = 0;
    for (int i = strip; i < strip + strips; i++) {
      if (sizes[i] == 0 || starts[i] + sizes[i] > file.length) {
        throw UnreadablePicture.ends(y + count, rows);
      }
      count += rowsIn(i);
    }
    return faxed(strip, strips, y, count);
  }

  private int rowsIn(int strip) {
    return Math.min(rowsPerStrip, rows - strip * rowsPerStrip);
  }

  /** Some bytes of the file, the first point in the highest bit. */
  private byte[] bits(long start, int count) {
    byte[] bytes = new byte[count];
    copy(start, count, bytes, 0);
    return bytes;
  }

  private void copy(long start, int count, byte[] bytes, int to) {
    System.arraycopy(file, (int) start, bytes, to, count);
    for (int i = to; lowFirst && i < to + count; i++) {
      bytes[i] = (byte) (Integer.reverse(bytes[i]) >>> Integer.SIZE - Byte.SIZE);
    }
  }

  /** Some rows of a strip, which go on where the last ones ended unless they are its first. */
  private byte[] unpacked(int strip, int y, int count) throws UnreadablePicture {
    if (y % rowsPerStrip == 0) {
      if (sizes[strip] == 0 || starts[strip] + sizes[strip] > file.length) {
        throw UnreadablePicture.ends(y, rows);
      }
      if (lowFirst) {
        unpacking.begin(bits(starts[strip], (int) sizes[strip]), 0, (int) sizes[strip]);
      } else {
        unpacking.begin(file, (int) starts[strip], (int) sizes[strip]);
      }
    }
    byte[] bytes = new byte[count * rowBytes];
    try {
      int got = unpacking.some(bytes, 0, bytes.length);
      if (got < bytes.length) {
        throw UnreadablePicture.ends(y + got / rowBytes, rows);
      }
      return bytes;
    } catch (DataFormatException e) {
      throw damaged(y);
    }
  }

  @Override
  public void close() {
    unpacking.close();
  }

  private UnreadablePicture damaged(int y) {
    return new UnreadablePicture(
        "the picture is damaged after " + y + " of " + rows + " rows; save it again");
  }

  private byte[] faxed(int strip, int strips, int y, int count) throws UnreadablePicture {
    ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
    boolean[] warned = new boolean[1];
    // Rows that a fax lost are told as a warning, and left white. That one is harmless.
    reader.addIIOReadWarningListener(
        (source, warning) -> warned[0] |= !warning.contains("should begin with EOL"));
    try (ImageInputStream in = small(strip, strips, count)) {
      reader.setInput(in, true, true);
      byte[] bytes = ((DataBufferByte) reader.read(0).getRaster().getDataBuffer()).getData();
      if (!warned[0] && bytes.length == count * rowBytes) {
        return bytes;
      }
    } catch (IOException | RuntimeException e) {
      // Told below: whatever the JDK says, the printer can only save the film again.
    } finally {
      reader.dispose();
    }
    throw damaged(y);
  }

  /** These strips as a file of their own: head, directory, where they lie, how long, and they. */
  private ImageInputStream small(int strip, int strips, int count) {
    Map<Integer, int[]> tags = new TreeMap<>();
    tags.put(TiffDirectory.COLUMNS, new int[] {columns});
    tags.put(TiffDirectory.ROWS, new int[] {count});
    tags.put(TiffDirectory.DEPTH, new int[] {1});
    tags.put(TiffDirectory.PACKING, new int[] {packing});
    tags.put(TiffDirectory.TONES, new int[] {1});
    tags.put(TiffDirectory.STRIP_STARTS, new int[strips]);
    tags.put(TiffDirectory.CHANNELS, new int[] {1});
    tags.put(TiffDirectory.STRIP_ROWS, new int[] {rowsPerStrip});
    tags.put(TiffDirectory.STRIP_BYTES, new int[strips]);
    tags.put(TiffDirectory.GROUP_3, new int[] {group3});
    tags.put(TiffDirectory.GROUP_4, new int[] {group4});
    int values = HEAD + 2 + tags.size() * ENTRY + Integer.BYTES;
    int at = values + (strips > 1 ? 2 * strips * Integer.BYTES : 0);
    int packed = 0;
    for (int i = 0; i < strips; i++) {
      tags.get(TiffDirectory.STRIP_STARTS)[i] = at + packed;
      tags.get(TiffDirectory.STRIP_BYTES)[i] = (int) sizes[strip + i];
      packed += (int) sizes[strip + i];
    }
    ByteBuffer head = ByteBuffer.allocate(at);
    head.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(HEAD);
    head.putShort((short) tags.size());
    for (Map.Entry<Integer, int[]> tag : tags.entrySet()) {
      int[] numbers = tag.getValue();
      boolean isShort = SHORTS.contains(tag.getKey());
      head.putShort((short) (int) tag.getKey()).putShort((short) (isShort ? SHORT : LONG));
      head.putInt(numbers.length);
      if (isShort) {
        head.putShort((short) numbers[0]).putShort((short) 0);
      } else if (numbers.length == 1) {
        head.putInt(numbers[0]);
      } else {
        head.putInt(values);
        for (int number : numbers) {
          head.putInt(values, number);
          values += Integer.BYTES;
        }
      }
    }
    byte[] small = Arrays.copyOf(head.array(), at + packed);
    for (int i = 0, to = at; i < strips; to += (int) sizes[strip + i], i++) {
      copy(starts[strip + i], (int) sizes[strip + i], small, to);
    }
    return new Bytes(small);
  }

  /** A file in memory, of which the JDK's own stream would make a copy as it is read. */
  private static final class Bytes extends ImageInputStreamImpl {

    private final byte[] all;

    Bytes(byte[] all) {
      this.all = all;
    }

    @Override
    public int read() {
      bitOffset = 0;
      return streamPos >= all.length ? -1 : all[(int) streamPos++] & 0xff;
    }

    @Override
    public int read(byte[] into, int from, int count) {
      bitOffset = 0;
      if (streamPos >= all.length) {
        return -1;
      }
      int some = (int) Math.min(count, all.length - streamPos);
      System.arraycopy(all, (int) streamPos, into, from, some);
      streamPos += some;
      return some;
    }

    @Override
    public long length() {
      return all.length;
    }
  }
}
