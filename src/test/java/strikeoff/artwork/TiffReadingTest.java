package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Iterator;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.plan.Artwork.Tone;

/** TIFF gives the points that were drawn, whoever wrote it: the JDK, and libtiff. */
class TiffReadingTest {

  private static Drawn drawn() {
    return new Drawn(26, 19, 100).with(Drawn.leaf(12, 9, 15, 9)).with(Drawn.bar(5, 5, 9, 0.8, 33));
  }

  private static OpenPoints read(byte[] file, Tone tone) throws Exception {
    Picture picture = Drawn.picture(file);
    assertThat(picture).isInstanceOf(Tiff.class);
    OpenPoints open = new OpenPoints(picture, 0, 0);
    picture.read(tone, open);
    return open;
  }

  private static void same(Bits bits, Drawn drawn, Tone tone) {
    assertThat(bits.columns()).isEqualTo(drawn.columns());
    assertThat(bits.rows()).isEqualTo(drawn.rows());
    for (int y = 0; y < bits.rows(); y++) {
      for (int x = 0; x < bits.columns(); x++) {
        assertThat(bits.get(x, y))
            .as("%d, %d", x, y)
            .isEqualTo(drawn.isDark(x, y) == (tone == Tone.DARK));
      }
    }
  }

  /** As the JDK writes it, in strips of eight rows. */
  private static byte[] written(Drawn drawn, int type, String packing) throws IOException {
    BufferedImage image = new BufferedImage(drawn.columns(), drawn.rows(), type);
    for (int y = 0; y < drawn.rows(); y++) {
      for (int x = 0; x < drawn.columns(); x++) {
        image.setRGB(x, y, drawn.isDark(x, y) ? 0xff000000 : 0xffffffff);
      }
    }
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("tiff");
    ImageWriter writer = writers.next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionType(packing);
    how.setTilingMode(ImageWriteParam.MODE_DISABLED);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream to = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(to);
      writer.write(null, new IIOImage(image, null, null), how);
    }
    writer.dispose();
    return out.toByteArray();
  }

  @ParameterizedTest
  @CsvSource({
    "12,CCITT RLE",
    "12,CCITT T.4",
    "12,CCITT T.6",
    "12,LZW",
    "12,ZLib",
    "12,PackBits",
    "12,Deflate",
    "10,LZW",
    "10,ZLib",
    "10,PackBits",
    "5,LZW",
    "5,Deflate",
    "6,LZW",
    "11,LZW",
    "11,ZLib",
    "13,LZW"
  })
  void whatTheJdkWrites(int type, String packing) throws Exception {
    Drawn drawn = drawn();
    byte[] file = written(drawn, type, packing);
    same(read(file, Tone.DARK).bits(), drawn, Tone.DARK);
    same(read(file, Tone.LIGHT).bits(), drawn, Tone.LIGHT);
  }

  /** Strips of 60 kB of noise: codes of LZW grow to their longest and begin anew, many times. */
  @ParameterizedTest
  @ValueSource(strings = {"LZW", "PackBits", "ZLib"})
  void whatTheJdkWritesOfNoise(String packing) throws Exception {
    Random noise = new Random(11);
    Drawn drawn = new Drawn(254, 4, 250).with((x, y) -> noise.nextInt(3) == 0);
    byte[] file = written(drawn, BufferedImage.TYPE_3BYTE_BGR, packing);
    same(read(file, Tone.DARK).bits(), drawn, Tone.DARK);
  }

  /**
   * Written by ImageMagick 6.9 with libtiff 4.5, from the PNG of the same drawing: black and white
   * by fax of two kinds, in either order of bits; grey by LZW with differences; colours of two
   * bytes, low first; a palette; RGB with alpha; not packed.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "g3",
        "g4",
        "g4-low-bits-first",
        "lzw-grey",
        "zip-rgb-16",
        "palette",
        "lzw-rgb-alpha",
        "none"
      })
  void whatLibtiffWrites(String name) throws Exception {
    try (InputStream in = TiffReadingTest.class.getResourceAsStream(name + ".tif")) {
      byte[] file = in.readAllBytes();
      same(read(file, Tone.DARK).bits(), drawn(), Tone.DARK);
      Picture picture = Drawn.picture(file);
      assertThat(picture.grid().orElseThrow().along()).isCloseTo(100 / 25.4, within(0.001));
    }
  }

  @Test
  void resolutionByTheInchAndByTheCentimetre() throws Exception {
    assertThat(new TiffDrawn(8, 8).resolution(600, 1, 2).picture().grid().orElseThrow().along())
        .isCloseTo(23.622, within(0.001));
    assertThat(new TiffDrawn(8, 8).resolution(480, 2, 3).picture().grid().orElseThrow().across())
        .isCloseTo(24, within(0.001));
    // Only the shape of a point, nothing by nothing, and next to nothing.
    assertThat(new TiffDrawn(8, 8).resolution(600, 1, 1).picture().grid()).isEmpty();
    assertThat(new TiffDrawn(8, 8).resolution(600, 0, 2).picture().grid()).isEmpty();
    assertThat(new TiffDrawn(8, 8).resolution(1, 1, 2).picture().grid()).isEmpty();
  }

  @Test
  void aFilmWhoseZeroIsWhiteAndOneWhoseZeroIsBlack() throws Exception {
    assertThat(
            read(new TiffDrawn(8, 8).set(TiffDirectory.TONES, 0).file(), Tone.DARK).bits().count())
        .isZero();
    assertThat(
            read(new TiffDrawn(8, 8).set(TiffDirectory.TONES, 1).file(), Tone.DARK).bits().count())
        .isEqualTo(64);
  }

  @Test
  void oneStripOfManyRowsIsReadInPieces() throws Exception {
    // 3 MB, not packed, in one strip.
    byte[] file = new TiffDrawn(8000, 3000).set(TiffDirectory.STRIP_ROWS, 3000).file();
    assertThat(read(file, Tone.DARK).bits().count()).isEqualTo(24_000_000);
  }
}
