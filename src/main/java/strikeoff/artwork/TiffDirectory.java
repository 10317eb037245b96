package strikeoff.artwork;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import strikeoff.artwork.Picture.Grid;

/**
 * The first directory of a TIFF file (TIFF 6.0, section 2), looked through before anything is
 * decoded or allocated by what it says. A second one is refused, and none after it is looked at.
 */
final class TiffDirectory {

  static final int COLUMNS = 256;
  static final int ROWS = 257;
  static final int DEPTH = 258;
  static final int PACKING = 259;
  static final int TONES = 262;
  static final int FILL_ORDER = 266;
  static final int STRIP_STARTS = 273;
  static final int ORIENTATION = 274;
  static final int CHANNELS = 277;
  static final int STRIP_ROWS = 278;
  static final int STRIP_BYTES = 279;
  static final int ALONG = 282;
  static final int ACROSS = 283;
  static final int PLANES = 284;
  static final int GROUP_3 = 292;
  static final int GROUP_4 = 293;
  static final int UNIT = 296;
  static final int PREDICTOR = 317;
  static final int PALETTE = 320;
  static final int TILE_COLUMNS = 322;
  static final int MORE_CHANNELS = 338;
  static final int FORMAT = 339;

  /** More numbers of one kind are none. */
  private static final int MOST = 1 << 16;

  private static final int HEAD = 8;
  private static final int ENTRY = 12;
  private static final int RATIONAL = 5;
  private static final double MM_PER_INCH = 25.4;
  private static final double MM_PER_CM = 10;

  /** Bytes of a value of each type; of a type that isn't known, nothing. */
  private static final int[] SIZES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};

  private final FilmParts file;
  private final ByteOrder order;

  /** By tag. */
  private final Map<Integer, ByteBuffer> entries = new HashMap<>();

  TiffDirectory(FilmParts file) throws IOException, UnreadablePicture {
    this.file = file;
    byte[] first = new byte[1];
    file.read(0, first, 0, 1);
    this.order = first[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
    long start = at(4, Integer.BYTES).getInt(0) & 0xffffffffL;
    if (start < HEAD) {
      throw cutOff();
    }
    int count = at(start, 2).getShort(0) & 0xffff;
    ByteBuffer all = at(start + 2, count * ENTRY);
    if (isAnother(start, start + 2 + (long) count * ENTRY)) {
      throw new UnreadablePicture(
          "this TIFF file holds more than one picture; save each film in a file of its own");
    }
    for (int i = 0; i < count; i++) {
      entries.putIfAbsent(
          all.getShort(i * ENTRY) & 0xffff, all.slice(i * ENTRY, ENTRY).order(order));
    }
  }

  /** True if the directory of another picture lies where four bytes say; some leave them out. */
  private boolean isAnother(long first, long pointer) throws IOException, UnreadablePicture {
    if (!isThere(pointer, Integer.BYTES)) {
      return false;
    }
    long start = at(pointer, Integer.BYTES).getInt(0) & 0xffffffffL;
    if (start == first || start < HEAD || !isThere(start, 2)) {
      return false;
    }
    int count = at(start, 2).getShort(0) & 0xffff;
    if (!isThere(start + 2, count * ENTRY)) {
      return false;
    }
    ByteBuffer all = at(start + 2, count * ENTRY);
    return IntStream.range(0, count).anyMatch(i -> (all.getShort(i * ENTRY) & 0xffff) == COLUMNS);
  }

  private boolean isThere(long place, int count) {
    return place + count <= file.length();
  }

  /** Some bytes of the file. */
  private ByteBuffer at(long place, int count) throws IOException, UnreadablePicture {
    if (!isThere(place, count)) {
      throw cutOff();
    }
    byte[] bytes = new byte[count];
    try {
      file.read(place, bytes, 0, count);
    } catch (EOFException e) {
      throw cutOff();
    }
    return ByteBuffer.wrap(bytes).order(order);
  }

  private static UnreadablePicture cutOff() {
    return new UnreadablePicture("this TIFF file ends before its picture begins; save it again");
  }

  ByteOrder order() {
    return order;
  }

  boolean has(int tag) {
    return entries.containsKey(tag);
  }

  /** The one number of a tag, or what is taken where there is none. */
  long number(int tag, long usual) throws IOException, UnreadablePicture {
    if (!has(tag)) {
      return usual;
    }
    return numbers(tag, 1, MOST)[0];
  }

  /**
   * The numbers of a tag, without sign.
   *
   * @param first how many of them are wanted
   * @param most how many there may be
   */
  long[] numbers(int tag, int first, int most) throws IOException, UnreadablePicture {
    ByteBuffer values = values(tag, first, most);
    int type = type(tag);
    long[] numbers = new long[first];
    for (int i = 0; i < first; i++) {
      numbers[i] =
          switch (type) {
            case 1 -> values.get(i) & 0xff;
            case 3 -> values.getShort(2 * i) & 0xffff;
            case 4 -> values.getInt(4 * i) & 0xffffffffL;
            default -> throw damaged(tag);
          };
    }
    return numbers;
  }

  private int type(int tag) {
    return entries.get(tag).getShort(2) & 0xffff;
  }

  /** A tag's first values, which lie in its entry if all fit in, else where that says. */
  private ByteBuffer values(int tag, int first, int most) throws IOException, UnreadablePicture {
    if (!has(tag)) {
      throw damaged(tag);
    }
    ByteBuffer entry = entries.get(tag);
    int type = type(tag);
    long count = entry.getInt(4) & 0xffffffffL;
    int size = type < SIZES.length ? SIZES[type] : 0;
    if (size == 0 || count < first) {
      throw damaged(tag);
    }
    if (count > most) {
      throw new UnreadablePicture(
          "this TIFF file gives "
              + count
              + " numbers for its "
              + named(tag)
              + ", where "
              + most
              + " would be right; save it again");
    }
    if (count * size <= Integer.BYTES) {
      return entry.slice(HEAD, Integer.BYTES).order(order);
    }
    long at = entry.getInt(HEAD) & 0xffffffffL;
    if (at + count * size > file.length()) {
      throw cutOff();
    }
    return at(at, first * size);
  }

  private static UnreadablePicture damaged(int tag) {
    return new UnreadablePicture(
        "this TIFF file is damaged where it says its " + named(tag) + "; save it again");
  }

  private static String named(int tag) {
    return switch (tag) {
      case COLUMNS, ROWS -> "points along and across";
      case STRIP_STARTS, STRIP_BYTES, STRIP_ROWS -> "strips";
      case PALETTE -> "colours";
      case ALONG, ACROSS, UNIT -> "resolution";
      default -> "kind of points (tag " + tag + ")";
    };
  }

  /** Points a millimetre; empty where only the shape of a point is said, or nothing that can be. */
  Optional<Grid> grid() throws IOException, UnreadablePicture {
    long unit = number(UNIT, 2);
    if (!has(ALONG) || !has(ACROSS) || unit != 2 && unit != 3) {
      return Optional.empty();
    }
    double mm = unit == 2 ? MM_PER_INCH : MM_PER_CM;
    return Optional.of(new Grid(ratio(ALONG) / mm, ratio(ACROSS) / mm)).filter(Grid::isSaid);
  }

  private double ratio(int tag) throws IOException, UnreadablePicture {
    ByteBuffer values = values(tag, 1, 1);
    if (type(tag) != RATIONAL) {
      throw damaged(tag);
    }
    double below = values.getInt(4) & 0xffffffffL;
    return below == 0 ? 0 : (values.getInt(0) & 0xffffffffL) / below;
  }

  /**
   * Three bytes a colour.
   *
   * @param colours how many there are
   */
  byte[] palette(int colours) throws IOException, UnreadablePicture {
    long[] shades = numbers(PALETTE, 3 * colours, 3 * colours);
    // Some write bytes where two of them should stand.
    int shift = Arrays.stream(shades).max().orElse(0) > 0xff ? Byte.SIZE : 0;
    byte[] palette = new byte[3 * colours];
    for (int i = 0; i < palette.length; i++) {
      palette[i] = (byte) (shades[i % 3 * colours + i / 3] >> shift);
    }
    return palette;
  }
}
