package strikeoff.artwork;

import java.io.IOException;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Optional;
import strikeoff.document.GivenUp;
import strikeoff.plan.Artwork.Tone;

/**
 * A TIFF picture (TIFF 6.0) of black and white, grey, a palette or RGB in strips. The directory is
 * read here and nowhere else; what is packed is unpacked some rows at a time.
 */
final class Tiff implements Picture {

  private static final int NOT_PACKED = 1;
  private static final int JPEG_OLD = 6;
  private static final int JPEG = 7;

  private final Head head;
  private final PngSamples samples;
  private final boolean inverted;
  private final boolean predicted;
  private final boolean swapped;
  private final TiffStrips strips;

  private Tiff(
      Head head,
      PngSamples samples,
      boolean inverted,
      boolean predicted,
      boolean swapped,
      TiffStrips strips) {
    this.head = head;
    this.samples = samples;
    this.inverted = inverted;
    this.predicted = predicted;
    this.swapped = swapped;
    this.strips = strips;
  }

  /** Reads the directory. The file begins as a TIFF file does. */
  static Tiff of(FilmParts file) throws IOException, UnreadablePicture {
    TiffDirectory directory = new TiffDirectory(file);
    long columns = directory.number(TiffDirectory.COLUMNS, 0);
    long rows = directory.number(TiffDirectory.ROWS, 0);
    Picture.requireSize(columns, rows);
    requireKind(directory);
    PngSamples samples = samples(directory);
    Picture.requireUnpacked(samples, columns, rows);
    boolean simple = samples.depth() == 1 && samples.channels() == 1;
    if (!simple && TiffStrips.FAX.contains((int) directory.number(TiffDirectory.PACKING, 1))) {
      throw new UnreadablePicture(
          "this TIFF file is packed as a fax is, but isn't black and white; save it again");
    }
    int bits = simple ? (int) columns : samples.rowBytes((int) columns) * Byte.SIZE;
    return new Tiff(
        new Head((int) columns, (int) rows, directory.grid()),
        samples,
        directory.number(TiffDirectory.TONES, 0) == 0,
        directory.number(TiffDirectory.PREDICTOR, 1) == 2,
        samples.depth() == Short.SIZE && directory.order() == ByteOrder.LITTLE_ENDIAN,
        new TiffStrips(file, directory, (int) rows, bits));
  }

  private static void requireKind(TiffDirectory directory) throws IOException, UnreadablePicture {
    long packed = directory.number(TiffDirectory.PACKING, NOT_PACKED);
    if (packed == JPEG || packed == JPEG_OLD) {
      throw new UnreadablePicture(
          "this TIFF file is packed as JPEG, and JPEG blurs edges; save the film as PNG or as TIFF"
              + " packed by LZW or G4");
    }
    if (!TiffStrips.PACKINGS.contains((int) packed)) {
      throw new UnreadablePicture(
          "this TIFF file is packed in a way that isn't known ("
              + packed
              + "); save it by LZW or G4");
    }
    if (!directory.has(TiffDirectory.TONES)) {
      throw new UnreadablePicture(
          "this TIFF file doesn't say whether 0 is black or white (tag 262); save it again, or as"
              + " PNG");
    }
    if (directory.has(TiffDirectory.TILE_COLUMNS)) {
      throw new UnreadablePicture("this TIFF file is cut into tiles; save it in strips, or as PNG");
    }
    if (directory.number(TiffDirectory.ORIENTATION, 1) != 1) {
      throw new UnreadablePicture(
          "this TIFF file says that its picture is to be turned or mirrored; save it as it is to be"
              + " seen");
    }
    if (directory.number(TiffDirectory.PLANES, 1) != 1) {
      throw new UnreadablePicture(
          "this TIFF file holds each of its colours for itself; save it point by point, or as PNG");
    }
    long predictor = directory.number(TiffDirectory.PREDICTOR, 1);
    if (predictor != 1 && predictor != 2 || directory.number(TiffDirectory.FORMAT, 1) != 1) {
      throw new UnreadablePicture(
          "this TIFF file holds numbers with a point; save the film in black and white, or in grey");
    }
  }

  private static PngSamples samples(TiffDirectory directory) throws IOException, UnreadablePicture {
    long tones = directory.number(TiffDirectory.TONES, 0);
    int channels = (int) directory.number(TiffDirectory.CHANNELS, 1);
    boolean alpha = directory.number(TiffDirectory.MORE_CHANNELS, 0) > 0;
    int colours =
        tones <= 1 && channels == 1
            ? PngSamples.GREY
            : tones <= 1 && channels == 2 && alpha
                ? PngSamples.GREY_ALPHA
                : tones == 2 && channels == 3
                    ? PngSamples.RGB
                    : tones == 2 && channels == 4 && alpha
                        ? PngSamples.RGB_ALPHA
                        : tones == 3 && channels == 1 ? PngSamples.PALETTE : -1;
    if (colours < 0) {
      throw new UnreadablePicture(
          "this TIFF file is neither black and white, grey nor RGB alone; save the film in black and"
              + " white, or in grey");
    }
    long[] depths =
        directory.has(TiffDirectory.DEPTH)
            ? directory.numbers(TiffDirectory.DEPTH, channels, channels)
            : new long[] {1};
    long depth = depths[0];
    if (!Png.isKind((int) Math.min(depth, Byte.MAX_VALUE), colours)
        || Arrays.stream(depths).anyMatch(d -> d != depth)) {
      throw new UnreadablePicture(
          "this TIFF file has points of a depth that isn't known; save the film in black and white,"
              + " or in grey");
    }
    return new PngSamples(
        colours,
        (int) depth,
        colours == PngSamples.PALETTE
            ? Optional.of(directory.palette(1 << depth))
            : Optional.empty(),
        Optional.empty());
  }

  @Override
  public Head head() {
    return head;
  }

  @Override
  public void read(Tone prints, PointTaker points) throws IOException, UnreadablePicture {
    SampleRows handOn = new SampleRows(samples, columns(), true, prints, points);
    int rowBytes = samples.rowBytes(columns());
    int y = 0;
    try (strips) {
      while (y < rows()) {
        GivenUp.ifAsked();
        byte[] bytes = strips.rowsFrom(y);
        for (int from = 0; from < bytes.length; from += rowBytes, y++) {
          straighten(bytes, from, rowBytes);
          handOn.row(y, 0, 1, bytes, from, columns());
        }
      }
    }
  }

  /** Makes a row as PNG has it: high bytes first, no differences, dark as zero. */
  private void straighten(byte[] bytes, int from, int count) {
    if (swapped) {
      for (int i = from; i < from + count; i += Short.BYTES) {
        byte low = bytes[i];
        bytes[i] = bytes[i + 1];
        bytes[i + 1] = low;
      }
    }
    if (predicted && samples.depth() == Byte.SIZE) {
      for (int i = from + samples.channels(); i < from + count; i++) {
        bytes[i] += bytes[i - samples.channels()];
      }
    } else if (predicted && samples.depth() == Short.SIZE) {
      int back = samples.pointBytes();
      for (int i = from + back; i < from + count; i += Short.BYTES) {
        int sum = PngSamples.two(bytes, i) + PngSamples.two(bytes, i - back);
        bytes[i] = (byte) (sum >> Byte.SIZE);
        bytes[i + 1] = (byte) sum;
      }
    }
    if (inverted) {
      for (int i = from; i < from + count; i++) {
        bytes[i] = (byte) ~bytes[i];
      }
    }
  }
}
