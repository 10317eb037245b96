package strikeoff.artwork;

import java.io.EOFException;
import java.io.IOException;
import java.util.Set;
import java.util.zip.DataFormatException;

/** The strips of a TIFF picture, unpacked some rows at a time. */
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

  /** Rows are unpacked together up to so many bytes. */
  private static final int AT_ONCE = 1 << 18;

  private final Packed packed;
  private final long length;
  private final int packing;
  private final int rowBytes;
  private final int rows;
  private final int rowsPerStrip;
  private final long[] starts;
  private final long[] sizes;

  private final Unpacking unpacking;

  /**
   * Looks at where strips lie.
   *
   * @param columns points of a row of one bit each, else bits of an unpacked row
   */
  TiffStrips(FilmParts file, TiffDirectory directory, int rows, int columns)
      throws IOException, UnreadablePicture {
    this.length = file.length();
    int says = (int) directory.number(TiffDirectory.PACKING, NOT_PACKED);
    this.packing = says == DEFLATE_OLD ? DEFLATE : says;
    this.packed = new Packed(file, directory.number(TiffDirectory.FILL_ORDER, 1) == 2);
    this.rows = rows;
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
      whole += starts[i] + sizes[i] > length ? 0 : sizes[i];
    }
    if (whole > length) {
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
          case NOT_PACKED -> packed::some;
          case LZW -> new Lzw(packed);
          case PACK_BITS -> new PackBits(packed);
          case DEFLATE -> new Unpacking.Deflate(packed);
          default -> {
            boolean twoWays = (directory.number(TiffDirectory.GROUP_3, 0) & 1) == 1;
            yield new Fax(packed, columns, packing, twoWays);
          }
        };
  }

  /**
   * Some whole rows, unpacked, from the beginning of a strip on or from where the last ones ended.
   *
   * @throws UnreadablePicture if the file ends before, or is damaged
   */
  byte[] rowsFrom(int y) throws IOException, UnreadablePicture {
    int strip = y / rowsPerStrip;
    int inStrip = Math.min(rowsPerStrip, rows - strip * rowsPerStrip);
    int count = Math.min(Math.max(1, AT_ONCE / rowBytes), inStrip - y % rowsPerStrip);
    byte[] bytes = new byte[count * rowBytes];
    int got = 0;
    try {
      if (y % rowsPerStrip == 0) {
        begin(strip);
      }
      got = unpacking.some(bytes, 0, bytes.length);
    } catch (DataFormatException e) {
      throw new UnreadablePicture(
          "the picture is damaged after " + y + " of " + rows + " rows; save it again");
    } catch (EOFException e) {
      // Told below: it became shorter meanwhile.
    }
    if (got < bytes.length) {
      throw UnreadablePicture.ends(y + got / rowBytes, rows);
    }
    return bytes;
  }

  /** A strip that is packed and cut off is not begun: what there is of it may be anything. */
  private void begin(int strip) throws IOException {
    long there = Math.max(0, Math.min(sizes[strip], length - starts[strip]));
    packed.begin(starts[strip], packing == NOT_PACKED || there == sizes[strip] ? there : 0);
    unpacking.begin();
  }

  @Override
  public void close() {
    unpacking.close();
  }
}
