package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import java.util.function.IntBinaryOperator;
import java.util.stream.IntStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.plugins.tiff.BaselineTIFFTagSet;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.plugins.tiff.TIFFTag;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.plan.Artwork.Tone;

/** A fax gives the points that went in, by another program's writer of T.4 and T.6: the JDK's. */
class FaxTest {

  private static final int LONG_RUN = 2700;
  private static final int ONE_WAY = 0;
  private static final int TWO_WAYS = 1;

  /** By bytes of eight points, of which a set one is black; in strips of so many rows. */
  private static byte[] written(
      int columns, int rows, IntBinaryOperator eight, String packing, int options, int stripRows)
      throws IOException {
    BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_BYTE_BINARY);
    byte[] points = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    int rowBytes = (columns + 7) / 8;
    for (int i = 0; i < points.length; i++) {
      points[i] = (byte) ~eight.applyAsInt(i % rowBytes, i / rowBytes);
    }
    ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionType(packing);
    IIOMetadata kind = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), how);
    TIFFDirectory tags = TIFFDirectory.createFromMetadata(kind);
    BaselineTIFFTagSet known = BaselineTIFFTagSet.getInstance();
    tags.addTIFFField(new TIFFField(known.getTag(TiffDirectory.STRIP_ROWS), stripRows));
    if (packing.endsWith("T.4")) {
      tags.addTIFFField(
          new TIFFField(
              known.getTag(TiffDirectory.GROUP_3), TIFFTag.TIFF_LONG, 1, new long[] {options}));
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream to = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(to);
      writer.write(null, new IIOImage(image, null, tags.getAsMetadata()), how);
    }
    writer.dispose();
    return out.toByteArray();
  }

  private static void same(
      int columns, int rows, IntBinaryOperator eight, String packing, int options, int stripRows)
      throws Exception {
    byte[] file = written(columns, rows, eight, packing, options, stripRows);
    TiffDirectory says = new TiffDirectory(FilmParts.of(file));
    assertThat(says.number(TiffDirectory.STRIP_ROWS, 0)).isEqualTo(stripRows);
    if (packing.endsWith("T.4")) {
      assertThat(says.number(TiffDirectory.GROUP_3, -1) & 1).isEqualTo(options);
    }
    Picture picture = Drawn.picture(file);
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(Tone.DARK, open);
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < columns; x++) {
        boolean black = (eight.applyAsInt(x / 8, y) >> 7 - x % 8 & 1) == 1;
        if (open.bits().get(x, y) != black) {
          assertThat(open.bits().get(x, y)).as("%d, %d", x, y).isEqualTo(black);
        }
      }
    }
  }

  /** Each row is white up to its own number, and then black, or the other way round. */
  @ParameterizedTest
  @CsvSource({"CCITT RLE,0", "CCITT RLE,255", "CCITT T.4,0", "CCITT T.4,255"})
  void aRunOfAnyLength(String packing, int first) throws Exception {
    same(
        LONG_RUN,
        LONG_RUN,
        (at, y) -> first ^ (at * 8 >= y ? 0xff : at * 8 + 8 <= y ? 0 : 0xff >> y % 8),
        packing,
        ONE_WAY,
        LONG_RUN);
  }

  /** Noise that changes little from row to row, from one that is nearly white to one half black. */
  @ParameterizedTest
  @CsvSource({
    "CCITT RLE,0",
    "CCITT T.4,0",
    "CCITT T.4,1",
    "CCITT T.6,0",
  })
  void rowsLikeThoseAbove(String packing, int options) throws Exception {
    for (int columns : new int[] {1, 7, 8, 9, 31, 333, 5000}) {
      for (int often : new int[] {5, 20, 400}) {
        Random noise = new Random(columns * 7L + often);
        int rows = 67;
        byte[][] points = new byte[rows][(columns + 7) / 8];
        for (int y = 0; y < rows; y++) {
          points[y] = points[Math.max(0, y - 1)].clone();
          for (int i = 0; i < points[y].length * 8; i++) {
            points[y][i / 8] ^= (byte) (noise.nextInt(often) == 0 ? 1 << i % 8 : 0);
          }
        }
        for (int stripRows : new int[] {rows, 8}) {
          same(columns, rows, (at, y) -> points[y][at], packing, options, stripRows);
        }
      }
    }
  }

  /** It is read as far as it was written, or refused; nothing else comes of it. */
  @ParameterizedTest
  @ValueSource(strings = {"CCITT RLE", "CCITT T.4", "CCITT T.6"})
  void aFaxThatIsWrongInAPlace(String packing) throws Exception {
    Random noise = new Random(23);
    byte[] points = new byte[20 * 40];
    IntStream.range(0, 300).forEach(i -> points[noise.nextInt(800)] ^= (byte) noise.nextInt(256));
    byte[] file = written(160, 40, (at, y) -> points[y * 20 + at], packing, TWO_WAYS, 40);
    TiffDirectory says = new TiffDirectory(FilmParts.of(file));
    int strip = (int) says.number(TiffDirectory.STRIP_STARTS, 0);
    int bytes = (int) says.number(TiffDirectory.STRIP_BYTES, 0);
    int refused = 0;
    for (int i = 0; i < bytes * Byte.SIZE; i++) {
      byte[] wrong = file.clone();
      wrong[strip + i / Byte.SIZE] ^= (byte) (1 << i % Byte.SIZE);
      refused += isRefused(wrong) ? 1 : 0;
    }
    assertThat(refused).isGreaterThan(bytes);
    for (int i = 1; i < bytes - 12; i++) {
      byte[] shorter =
          new TiffDrawn(160, 40)
              .set(TiffDirectory.PACKING, says.number(TiffDirectory.PACKING, 0))
              .set(TiffDirectory.GROUP_3, says.number(TiffDirectory.GROUP_3, 0))
              .data(Arrays.copyOfRange(file, strip, strip + i))
              .file();
      assertThat(isRefused(shorter)).as("%d bytes", i).isTrue();
    }
  }

  private static boolean isRefused(byte[] file) throws Exception {
    try {
      Picture picture = Drawn.picture(file);
      picture.read(Tone.DARK, new OpenPoints(picture, 0, 0));
      return false;
    } catch (UnreadablePicture e) {
      return true;
    }
  }
}
