package strikeoff.artwork;

import java.io.EOFException;
import java.io.IOException;
import java.util.Optional;
import java.util.zip.DataFormatException;
import strikeoff.document.GivenUp;
import strikeoff.plan.Artwork.Tone;

/** A PNG picture (ISO/IEC 15948), of any depth and kind of colour, interlaced or not. */
final class Png implements Picture {

  static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  private static final int HEAD = 13;
  private static final int MOST_COLOURS = 256;
  private static final int MILLIMETRES = 1000;

  /** First column, first row, steps along and across of each pass (Adam7, clause 8.2). */
  private static final int[][] PASSES = {
    {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
  };

  private static final int[][] ONE_PASS = {{0, 0, 1, 1}};

  private final PngChunks chunks;
  private final Head head;
  private final boolean interlaced;
  private final PngSamples samples;

  private Png(PngChunks chunks, Head head, boolean interlaced, PngSamples samples) {
    this.chunks = chunks;
    this.head = head;
    this.interlaced = interlaced;
    this.samples = samples;
  }

  /** Reads what comes before the points. The signature was read already. */
  static Png of(ByteSource in) throws IOException, UnreadablePicture {
    try {
      return head(new PngChunks(in));
    } catch (EOFException e) {
      throw new UnreadablePicture("this PNG file ends before its picture begins; save it again");
    }
  }

  private static Png head(PngChunks chunks) throws IOException, UnreadablePicture {
    if (!chunks.next().equals("IHDR")) {
      throw new UnreadablePicture("this PNG file has no head; save it again");
    }
    byte[] head = chunks.bytes(HEAD);
    if (head.length < HEAD) {
      throw new UnreadablePicture("the head of this PNG file is too short; save it again");
    }
    Picture.requireSize(ByteSource.four(head, 0), ByteSource.four(head, 4));
    int depth = head[8];
    int colours = head[9];
    if (!isKind(depth, colours) || head[10] != 0 || head[11] != 0 || (head[12] & ~1) != 0) {
      throw new UnreadablePicture(
          "this PNG file is of no kind that the standard knows; save it again, in black and white");
    }
    Optional<byte[]> palette = Optional.empty();
    Optional<byte[]> clear = Optional.empty();
    Optional<Grid> grid = Optional.empty();
    for (String type = chunks.next(); !type.equals("IDAT"); type = chunks.next()) {
      switch (type) {
        case "PLTE" -> palette = Optional.of(chunks.bytes(3 * MOST_COLOURS));
        case "tRNS" -> clear = clear(chunks.bytes(MOST_COLOURS), colours);
        case "pHYs" -> grid = grid(chunks.bytes(9));
        case "IEND" -> throw new UnreadablePicture("this PNG file holds no picture; save it again");
        default -> {
          if (chunks.isNeeded()) {
            throw new UnreadablePicture(
                "this PNG file has parts that the standard doesn't know; save it again, as plain PNG");
          }
        }
      }
    }
    if (colours == PngSamples.PALETTE && (palette.isEmpty() || palette.get().length < 3)) {
      throw new UnreadablePicture("this PNG file lacks its palette; save it again");
    }
    int columns = (int) ByteSource.four(head, 0);
    int rows = (int) ByteSource.four(head, 4);
    PngSamples samples = new PngSamples(colours, depth, palette, clear);
    Picture.requireUnpacked(samples, columns, rows);
    return new Png(chunks, new Head(columns, rows, grid), head[12] == 1, samples);
  }

  /** True of the depths and kinds of colour that the standard knows together. */
  static boolean isKind(int depth, int colours) {
    return switch (colours) {
      case PngSamples.GREY -> depth == 1 || depth == 2 || depth == 4 || depth == 8 || depth == 16;
      case PngSamples.PALETTE -> depth == 1 || depth == 2 || depth == 4 || depth == 8;
      case PngSamples.RGB, PngSamples.GREY_ALPHA, PngSamples.RGB_ALPHA -> depth == 8 || depth == 16;
      default -> false;
    };
  }

  private static Optional<byte[]> clear(byte[] bytes, int colours) throws UnreadablePicture {
    int least =
        switch (colours) {
          case PngSamples.GREY -> 2;
          case PngSamples.RGB -> 6;
          default -> 0;
        };
    if (bytes.length < least) {
      throw new UnreadablePicture(
          "this PNG file is damaged where it says what is transparent; save it again");
    }
    return Optional.of(bytes);
  }

  /**
   * Only metres say a size; without them it is the shape of a point alone. So does next to nothing,
   * which programs write that don't know.
   */
  private static Optional<Grid> grid(byte[] bytes) {
    if (bytes.length < 9 || bytes[8] != 1) {
      return Optional.empty();
    }
    Grid grid =
        new Grid(
            (double) ByteSource.four(bytes, 0) / MILLIMETRES,
            (double) ByteSource.four(bytes, 4) / MILLIMETRES);
    return Optional.of(grid).filter(Grid::isSaid);
  }

  @Override
  public Head head() {
    return head;
  }

  @Override
  public void read(Tone prints, PointTaker points) throws IOException, UnreadablePicture {
    SampleRows handOn = new SampleRows(samples, columns(), !interlaced, prints, points);
    int done = 0;
    try (chunks) {
      for (int[] pass : interlaced ? PASSES : ONE_PASS) {
        int wide = (columns() - pass[0] + pass[2] - 1) / pass[2];
        int high = (rows() - pass[1] + pass[3] - 1) / pass[3];
        if (wide == 0 || high == 0) {
          continue;
        }
        // The first byte of a row names its filter; before the first row all are nothing.
        byte[] row = new byte[samples.rowBytes(wide) + 1];
        byte[] above = new byte[row.length];
        for (int i = 0; i < high; i++) {
          GivenUp.ifAsked();
          if (chunks.unpack(row, 0, row.length) < row.length) {
            throw interlaced
                ? new UnreadablePicture("the picture ends before all its points; save it again")
                : UnreadablePicture.ends(done, rows());
          }
          PngFilters.undo(row, above, samples.pointBytes());
          handOn.row(pass[1] + i * pass[3], pass[0], pass[2], row, 1, wide);
          done++;
          byte[] spare = above;
          above = row;
          row = spare;
        }
      }
      chunks.end();
    } catch (DataFormatException e) {
      throw new UnreadablePicture(
          "the picture is damaged after " + done + " of " + rows() + " rows; save it again");
    } catch (EOFException e) {
      throw UnreadablePicture.ends(done, rows());
    }
  }
}
