package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.artwork.Artworks.Looked;
import strikeoff.document.Bounds;

/** Whatever lies beside a plan ends as a measure or as a sentence, soon. */
class HostilePicturesTest {

  @TempDir Path folder;

  private Looked look(String name) throws IOException {
    return new BesidePlan(folder).look(BesidePlan.wanted(name, 100));
  }

  private String refused(String name) throws IOException {
    return new BesidePlan(folder).refused(BesidePlan.wanted(name, 100));
  }

  private static byte[] of(byte[]... parts) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.writeBytes(Png.SIGNATURE);
    for (byte[] part : parts) {
      all.writeBytes(part);
    }
    return all.toByteArray();
  }

  private static byte[] idat(byte[] raw) {
    return Drawn.chunk("IDAT", out -> out.write(Drawn.packed(raw)));
  }

  private static final byte[] END = Drawn.chunk("IEND", out -> {});

  private static byte[] wrongSum(byte[] chunk) {
    byte[] wrong = chunk.clone();
    wrong[wrong.length - 1] ^= 1;
    return wrong;
  }

  /** Each with a part of the sentence that it ends in. */
  private static Map<String, Object[]> hostile() {
    byte[] two = {0, 0, 0, 0};
    byte[] head = Drawn.head(2, 2, 1, 0, 0);
    Map<String, Object[]> all = new LinkedHashMap<>();
    all.put("huge", pair(of(Drawn.head(60_000, 60_000, 1, 0, 0)), "before its picture begins"));
    all.put(
        "huge and begun",
        pair(
            of(Drawn.head(60_000, 60_000, 1, 0, 0), idat(two)),
            "60000 x 60000 points; at most 200"));
    all.put(
        "long and thin",
        pair(of(Drawn.head(Integer.MAX_VALUE, 1, 16, 6, 0), idat(two)), "at most 100000 along"));
    all.put("below zero", pair(of(Drawn.head(-5, 1, 1, 0, 0), idat(two)), "points"));
    all.put("no points", pair(of(Drawn.head(0, 0, 1, 0, 0), idat(two)), "has no points"));
    all.put(
        "huge once it is unpacked",
        pair(
            of(Drawn.head(14_000, 14_000, 16, 6, 0), idat(two)),
            "1568 MB of colours once it is unpacked, and at most 420"));
    all.put("short", pair(of(head, idat(new byte[] {0, 0})), "ends after 1 of 2 rows"));
    all.put("no end", pair(of(head), "before its picture begins"));
    all.put("no picture", pair(of(head, END), "holds no picture"));
    all.put("no head", pair(of(idat(two)), "has no head"));
    all.put("wrong sum of the head", pair(of(wrongSum(head), idat(two), END), "“IHDR”"));
    all.put("wrong sum of the points", pair(of(head, wrongSum(idat(two)), END), "“IDAT”"));
    all.put(
        "not packed",
        pair(of(head, Drawn.chunk("IDAT", out -> out.write(two)), END), "damaged after 0 of 2"));
    all.put("no such filter", pair(of(head, idat(new byte[] {9, 0, 0, 0}), END), "filter"));
    all.put("odd depth", pair(of(Drawn.head(2, 2, 3, 0, 0), idat(two)), "no kind"));
    all.put("odd colours", pair(of(Drawn.head(2, 2, 8, 5, 0), idat(two)), "no kind"));
    all.put("odd interlace", pair(of(Drawn.head(2, 2, 8, 0, 7), idat(two)), "no kind"));
    all.put("no palette", pair(of(Drawn.head(2, 2, 8, 3, 0), idat(two)), "lacks its palette"));
    all.put(
        "colour that the palette lacks",
        pair(
            of(
                Drawn.head(2, 2, 8, 3, 0),
                Drawn.chunk("PLTE", out -> out.write(new byte[6])),
                idat(new byte[] {0, 1, 7, 0, 0, 0}),
                END),
            "colour 7 of its palette, which holds 2"));
    all.put(
        "huge palette",
        pair(
            of(
                Drawn.head(2, 2, 8, 3, 0),
                Drawn.chunk("PLTE", out -> out.write(new byte[100_000])),
                idat(two)),
            "“PLTE”"));
    all.put(
        "part longer than can be",
        pair(of(head, new byte[] {-1, -1, -1, -1, 'I', 'D', 'A', 'T'}), "damaged"));
    all.put("unknown part", pair(of(head, Drawn.chunk("ZZZZ", out -> {}), idat(two)), "parts"));
    all.put(
        "as many points a metre as can be written",
        pair(
            of(
                head,
                Drawn.chunk(
                    "pHYs",
                    out -> {
                      out.writeInt(-1);
                      out.writeInt(-1);
                      out.writeByte(1);
                    }),
                idat(two),
                END),
            "says that it has 109092169 points an inch, and films have at most 10160"));
    all.put("nothing", pair(new byte[0], "empty"));
    all.put("text", pair("plan: it".getBytes(StandardCharsets.UTF_8), "no picture"));
    all.put("jpeg", pair(new byte[] {-1, -40, -1, -32, 0, 0, 0, 0}, "JPEG blurs edges"));
    all.put("bitmap without a size", pair("P4\n#".getBytes(StandardCharsets.UTF_8), "how large"));
    all.put(
        "huge bitmap", pair("P4 60000 60000 x".getBytes(StandardCharsets.UTF_8), "at most 200"));
    all.put(
        "bitmap beyond counting",
        pair("P4 99999999999 9 x".getBytes(StandardCharsets.UTF_8), "more than 10 digits"));
    all.put("short bitmap", pair("P4 8 9 xx".getBytes(StandardCharsets.UTF_8), "after 2 of 9"));
    all.put("bitmap of letters", pair("P1 2 2 10x1".getBytes(StandardCharsets.UTF_8), "0 and 1"));
    return all;
  }

  private static Object[] pair(byte[] file, String says) {
    return new Object[] {file, says};
  }

  @TestFactory
  Stream<DynamicTest> eachEndsInASentence() {
    return hostile().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey(),
                    () -> {
                      Files.write(folder.resolve("f.png"), (byte[]) one.getValue()[0]);
                      assertTimeout(
                          Duration.ofSeconds(5),
                          () -> assertThat(refused("f.png")).contains((String) one.getValue()[1]));
                    }));
  }

  @Test
  void textThatUnpacksToTwoHundredMebibytesIsPassedOver() throws IOException {
    byte[] bomb = Drawn.packed(new byte[200 << 20]);
    byte[] text =
        Drawn.chunk(
            "zTXt",
            out -> {
              out.writeBytes("Comment\0\0");
              out.write(bomb);
            });
    Files.write(
        folder.resolve("f.png"), of(Drawn.head(2, 2, 1, 0, 0), text, idat(new byte[4]), END));
    long before = System.nanoTime();
    assertThat(look("f.png")).isInstanceOf(Looked.Seen.class);
    assertThat(System.nanoTime() - before).isLessThan(2_000_000_000L);
  }

  /**
   * A rectangle of 10 cm with 2,000 points a side: a check of single points has 100 of them a cm.
   */
  @Test
  void aTextureThatNoMeshHoldsEndsInASentence() throws IOException {
    Drawn check = new Drawn(100, 100, 508).with((x, y) -> (int) (x * 20) % 2 == (int) (y * 20) % 2);
    Files.write(folder.resolve("f.png"), check.png());
    assertThat(refused("f.png"))
        .containsPattern(
            "100 lines or dots a cm over its first 9\\d\\d rows, and no mesh holds more than 45");
    // A film of 40 dots a cm all over: more than any mesh holds well, and told by its rule.
    Drawn dots = new Drawn(100, 100, 508).with(Drawn.halftone(40, 0, (x, y) -> 0.4));
    Files.write(folder.resolve("f.png"), dots.png());
    assertThat(look("f.png")).isInstanceOf(Looked.Seen.class);
  }

  /** A film that the plan itself says the resolution of needs no word of its file. */
  @Test
  void thePlansResolutionStandsForThatOfTheFile() throws IOException {
    Files.write(
        folder.resolve("f.png"),
        Drawn.file(2, 2, 1, 0, 0, new byte[] {0, 0, 0, 0}, Integer.MAX_VALUE));
    Wanted wanted = BesidePlan.wanted("f.png", 100);
    assertThat(
            new BesidePlan(folder)
                .refused(
                    new Wanted(
                        "f.png",
                        wanted.prints(),
                        false,
                        Optional.of(24.0),
                        wanted.margin(),
                        wanted.size())))
        .isEmpty();
  }

  @Test
  void whatFollowsThePointsIsPassedOver() throws IOException {
    Files.write(
        folder.resolve("f.png"),
        of(Drawn.head(2, 2, 1, 0, 0), idat(new byte[1000]), END, new byte[] {1, 2, 3}));
    assertThat(look("f.png")).isInstanceOf(Looked.Seen.class);
  }

  @Test
  void whatComesAfterAPbmPictureIsTold() throws IOException {
    for (String tail : new String[] {"P4\n8 2\nab", "x"}) {
      Files.writeString(folder.resolve("f.pbm"), "P4\n8 2\nab" + tail);
      assertThat(refused("f.pbm")).contains("goes on after its picture");
    }
    Files.writeString(folder.resolve("f.pbm"), "P1\n2 2\n1 0\n0 1\n\n");
    assertThat(refused("f.pbm")).isEmpty();
  }

  @Test
  void whatBeginsInUtf16OrBigTiffIsNamed() throws IOException {
    Files.write(folder.resolve("f.svg"), "\ufeff<svg/>".getBytes(StandardCharsets.UTF_16LE));
    assertThat(refused("f.svg")).contains("UTF-16");
    Files.writeString(folder.resolve("f.tif"), "MM\0+\0\b\0\0");
    assertThat(refused("f.tif")).contains("BigTIFF");
  }

  @Test
  void nothingOutsideTheFolderIsOpened() throws IOException {
    Path outside = Files.createTempFile("outside", ".png");
    Files.write(outside, new Drawn(10, 10, 100).png());
    Files.createSymbolicLink(folder.resolve("link.png"), outside);
    Files.createSymbolicLink(folder.resolve("films"), outside.getParent());
    Files.createDirectory(folder.resolve("below"));
    for (String name :
        new String[] {
          "../" + outside.getFileName(),
          outside.toString(),
          "link.png",
          "films/" + outside.getFileName(),
          "below/../../x.png",
          "https://example.org/f.png",
          "/dev/zero",
          ""
        }) {
      assertThat(refused(name)).as(name).contains("lies beside the plan");
    }
    assertThat(refused("./f.png")).contains("leave out “./”");
    assertThat(refused("below//f.png")).contains("leave out “./”");
    assertThat(refused("C:\\f.png")).contains("between folders stands “/”");
    for (String name : new String[] {"file:f.png", "f\u0000.png", "films/*.png", "a\nb.png"}) {
      assertThat(refused(name)).as(name).contains("is called so");
    }
    assertThat(refused("below/")).isEqualTo("this is a folder; name a picture in it");
    assertThat(refused("below")).isEqualTo("this is a folder; name a picture in it");
    Files.delete(outside);
  }

  @Test
  void aMissingOneIsGuessed() throws IOException {
    Files.createDirectory(folder.resolve("films"));
    Files.write(folder.resolve("films/heron-blue.png"), new Drawn(10, 10, 100).png());
    assertThat(refused("films/heron-bleu.png"))
        .isEqualTo(
            "there is no file “films/heron-bleu.png” beside the plan; did you mean"
                + " “films/heron-blue.png”?");
    assertThat(refused("flims/heron-blue.png")).contains("did you mean “films”?");
  }

  @Test
  void aPlanFromStandardInputHasNoFolder() {
    assertThat(
            Artworks.nowhere()
                .look(BesidePlan.wanted("f.png", 100), Bounds.USUAL, BesidePlan.ALL_POINTS))
        .isInstanceOfSatisfying(
            Looked.Refused.class, r -> assertThat(r.why()).contains("comes from none"));
  }
}
