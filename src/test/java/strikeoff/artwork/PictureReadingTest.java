package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.plan.Artwork.Tone;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/** Every kind of picture gives the same points, held against pictures that a library writes. */
class PictureReadingTest {

  private static Drawn drawn() {
    return new Drawn(26, 19, 100).with(Drawn.leaf(12, 9, 15, 9)).with(Drawn.bar(5, 5, 9, 0.8, 33));
  }

  private static Bits read(byte[] file, Tone tone) throws Exception {
    Picture picture = Drawn.picture(file);
    OpenPoints exposure = new OpenPoints(picture, 0, 0);
    picture.read(tone, exposure);
    return exposure.bits();
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

  @ParameterizedTest
  @CsvSource({"1,false", "1,true", "2,true", "4,true", "8,false", "8,true", "16,true"})
  void greyOfEveryDepthAndFilter(int depth, boolean filtered) throws Exception {
    Drawn drawn = drawn();
    byte[] png = drawn.png(depth, filtered, 0);
    same(read(png, Tone.DARK), drawn, Tone.DARK);
    same(read(png, Tone.LIGHT), drawn, Tone.LIGHT);
  }

  @Test
  void portableBitmapInBytesAndInDigits() throws Exception {
    Drawn drawn = drawn();
    same(read(drawn.pbm(), Tone.DARK), drawn, Tone.DARK);
    StringBuilder digits = new StringBuilder("P1\n#a\n " + drawn.columns() + "\n#b #c\n");
    digits.append(drawn.rows()).append('\n');
    for (int y = 0; y < drawn.rows(); y++) {
      for (int x = 0; x < drawn.columns(); x++) {
        digits.append(drawn.isDark(x, y) ? '1' : '0').append(x % 7 == 0 ? "\n" : "");
      }
    }
    byte[] file = digits.toString().getBytes(StandardCharsets.US_ASCII);
    same(read(file, Tone.DARK), drawn, Tone.DARK);
    same(read(file, Tone.LIGHT), drawn, Tone.LIGHT);
  }

  /** Kinds of image that the JDK's own writer of PNG makes; it is no code of ours. */
  static Stream<Integer> kinds() {
    return Stream.of(
        java.awt.image.BufferedImage.TYPE_BYTE_BINARY,
        java.awt.image.BufferedImage.TYPE_BYTE_GRAY,
        java.awt.image.BufferedImage.TYPE_USHORT_GRAY,
        java.awt.image.BufferedImage.TYPE_BYTE_INDEXED,
        java.awt.image.BufferedImage.TYPE_INT_RGB,
        java.awt.image.BufferedImage.TYPE_INT_ARGB);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void whatTheJdkWritesPlainAndInterlaced(int kind) throws Exception {
    Drawn drawn = drawn();
    var image = new java.awt.image.BufferedImage(drawn.columns(), drawn.rows(), kind);
    for (int y = 0; y < drawn.rows(); y++) {
      for (int x = 0; x < drawn.columns(); x++) {
        image.setRGB(x, y, drawn.isDark(x, y) ? 0xff000000 : 0xffffffff);
      }
    }
    for (boolean interlaced : new boolean[] {false, true}) {
      var writer = javax.imageio.ImageIO.getImageWritersByFormatName("png").next();
      var how = writer.getDefaultWriteParam();
      how.setProgressiveMode(
          interlaced
              ? javax.imageio.ImageWriteParam.MODE_DEFAULT
              : javax.imageio.ImageWriteParam.MODE_DISABLED);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (var out = new javax.imageio.stream.MemoryCacheImageOutputStream(bytes)) {
        writer.setOutput(out);
        writer.write(null, new javax.imageio.IIOImage(image, null, null), how);
      }
      assertThat(bytes.toByteArray()[28]).as("interlaced").isEqualTo((byte) (interlaced ? 1 : 0));
      same(read(bytes.toByteArray(), Tone.DARK), drawn, Tone.DARK);
    }
  }

  @Test
  void whatIsTransparentPrintsNothing() throws Exception {
    // Black and clear, black and opaque, white and opaque.
    byte[] raw = {0, 0, 0, 0, (byte) 255, (byte) 255, (byte) 255};
    byte[] png = Drawn.file(3, 1, 8, PngSamples.GREY_ALPHA, 0, raw, 0);
    Bits dark = read(png, Tone.DARK);
    assertThat(new boolean[] {dark.get(0, 0), dark.get(1, 0), dark.get(2, 0)})
        .containsExactly(false, true, false);
    Bits light = read(png, Tone.LIGHT);
    assertThat(new boolean[] {light.get(0, 0), light.get(1, 0), light.get(2, 0)})
        .containsExactly(false, false, true);
  }

  @Test
  void aPointPrintsIfItIsDarkerThanOneHalf() throws Exception {
    byte[] png = Drawn.file(2, 1, 8, 0, 0, new byte[] {0, 127, (byte) 128}, 0);
    Bits dark = read(png, Tone.DARK);
    Bits light = read(png, Tone.LIGHT);
    assertThat(dark.get(0, 0)).isTrue();
    assertThat(dark.get(1, 0)).isFalse();
    assertThat(light.get(0, 0)).isFalse();
    assertThat(light.get(1, 0)).isTrue();
  }

  @Test
  void marginIsCutOffAndResolutionIsSaid() throws Exception {
    Drawn drawn = new Drawn(40, 30, 254).with((x, y) -> x < 5.06 || y > 24.94 && y < 26);
    Picture picture = Drawn.picture(drawn.png());
    Wanted wanted =
        new Wanted(
            "f.png",
            Tone.DARK,
            true,
            Optional.empty(),
            new Length(5),
            new Pair(new Length(30), new Length(20)));
    Placing placing = Placing.of(picture, wanted);
    assertThat(placing.alongMargin()).isEqualTo(50);
    assertThat(placing.says().orElseThrow().along().mm()).isEqualTo(30);
    OpenPoints open = new OpenPoints(picture, placing.alongMargin(), placing.acrossMargin());
    picture.read(Tone.DARK, open);
    var artwork = PictureMeasures.of(open, wanted, true).artwork(wanted, placing);
    // Left of the margin's end stands less than one point; seen through its back it lies right.
    assertThat(artwork.reach().orElseThrow().right().mm()).isEqualTo(30);
    assertThat(artwork.reach().orElseThrow().near().mm()).isEqualTo(0);
  }

  /** A disc and a bar have areas that anybody can work out. */
  @ParameterizedTest
  @ValueSource(ints = {300, 600})
  void areasOfADiscAndATurnedBar(int perInch) throws Exception {
    double perMm = perInch / 25.4;
    Drawn disc = new Drawn(12, 12, perInch).with(Drawn.disc(6.013, 6.007, 10));
    double area = read(disc.png(), Tone.DARK).count() / perMm / perMm;
    assertThat(area).isBetween(78.5398 * 0.999, 78.5398 * 1.001);
    Drawn bar = new Drawn(30, 30, perInch).with(Drawn.bar(15, 15, 20, 5, 27));
    double barred = read(bar.png(), Tone.DARK).count() / perMm / perMm;
    assertThat(barred).isBetween(100 * 0.999, 100 * 1.001);
  }

  @Test
  void cutOffAnywhereItEndsInASentence() {
    byte[] png = drawn().png(8, true, 3937);
    for (int length = 0; length < png.length - 24; length += 7) {
      String said = refusal(Arrays.copyOf(png, length));
      assertThat(said).as("%d of %d bytes", length, png.length).isNotEmpty();
    }
    assertThat(refusal(Arrays.copyOf(png, png.length - 60)))
        .matches("the picture ends after \\d+ of 75 rows; save it again");
  }

  /** Empty if it is read. */
  static String refusal(byte[] file) {
    try {
      read(file, Tone.DARK);
      return "";
    } catch (UnreadablePicture e) {
      return e.getMessage();
    } catch (Exception e) {
      throw new AssertionError("no sentence for " + file.length + " bytes", e);
    }
  }
}
