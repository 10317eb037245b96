package strikeoff.artwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A TIFF file that claims what can't be ends in a sentence, before anything is done by it. */
class HostileTiffsTest {

  private static final int G4 = 4;
  private static final int LZW = 5;
  private static final int PACK_BITS = 32773;
  private static final int EXIF = 34665;

  @TempDir Path folder;

  /** Empty if it is read. */
  private String refused(byte[] file) throws IOException {
    Files.write(folder.resolve("f.tif"), file);
    return new BesidePlan(folder).refused(BesidePlan.wanted("f.tif", 100));
  }

  private static TiffDrawn small() {
    return new TiffDrawn(16, 16);
  }

  /** Each with a part of the sentence that it ends in. */
  private static Map<String, Object[]> hostile() {
    byte[] rubbish = new byte[500];
    new Random(17).nextBytes(rubbish);
    Map<String, Object[]> all = new LinkedHashMap<>();
    put(
        all,
        "60000 x 60000",
        new TiffDrawn(60_000, 60_000).data(new byte[9]),
        "60000 x 60000 points; at most 200");
    put(
        all,
        "500 million strips",
        small().says(TiffDirectory.STRIP_STARTS, 4, 500_000_000, 8),
        "gives 500000000 numbers for its strips, where 1 would be right");
    put(
        all,
        "as many strips as rows, all the same bytes",
        small()
            .set(TiffDirectory.PACKING, LZW)
            .set(TiffDirectory.STRIP_ROWS, 1)
            .data(shorts(16, 8, 16, 60))
            .says(TiffDirectory.STRIP_STARTS, 3, 16, 122)
            .says(TiffDirectory.STRIP_BYTES, 3, 16, 154),
        "lie over each other");
    put(all, "cut off in its directory", small().cutAfter(40), "ends before its picture begins");
    put(all, "cut off after its head", small().cutAfter(8), "ends before its picture begins");
    put(all, "cut off in its rows", small().cutAfter(140), "ends after 9 of 16 rows");
    put(all, "no directory", small().directoryAt(0), "ends before its picture begins");
    put(all, "a directory beyond the end", small().directoryAt(-5), "ends before its picture");
    put(all, "no points", small().set(TiffDirectory.ROWS, 0), "has no points");
    put(all, "no size", small().without(TiffDirectory.COLUMNS), "has no points");
    put(all, "no strips", small().without(TiffDirectory.STRIP_STARTS), "where it says its strips");
    put(all, "long and thin", small().set(TiffDirectory.COLUMNS, -1), "at most 100000");
    put(
        all,
        "no rows in a strip",
        small().set(TiffDirectory.STRIP_ROWS, 0),
        "where it says its strips");
    put(
        all,
        "strips that begin beyond the end",
        small().set(TiffDirectory.STRIP_STARTS, -9),
        "ends after 0 of 16 rows");
    put(
        all,
        "a billion channels",
        small().set(TiffDirectory.CHANNELS, 1_000_000_000),
        "neither black and white");
    put(
        all,
        "depths that are said a billion times",
        small().says(TiffDirectory.DEPTH, 3, 1_000_000_000, 8),
        "gives 1000000000 numbers for its kind of points");
    put(
        all,
        "a size of a type that there isn't",
        small().says(TiffDirectory.COLUMNS, 77, 1, 16),
        "damaged where it says its points along");
    put(
        all,
        "a size in letters",
        small().says(TiffDirectory.COLUMNS, 2, 1, 16),
        "damaged where it says its points along");
    put(
        all,
        "a palette that is short",
        small()
            .set(TiffDirectory.TONES, 3)
            .set(TiffDirectory.DEPTH, 8)
            .says(TiffDirectory.PALETTE, 3, 6, 8),
        "damaged where it says its colours");
    put(all, "no palette", small().set(TiffDirectory.TONES, 3), "where it says its colours");
    put(all, "no tones", small().without(TiffDirectory.TONES), "whether 0 is black or white");
    put(all, "inks", small().set(TiffDirectory.TONES, 5), "neither black and white");
    put(all, "jpeg within", small().set(TiffDirectory.PACKING, 7), "JPEG blurs edges");
    put(all, "packed oddly", small().set(TiffDirectory.PACKING, 34712), "isn't known (34712)");
    put(all, "tiles", small().set(TiffDirectory.TILE_COLUMNS, 16), "cut into tiles");
    put(all, "turned", small().set(TiffDirectory.ORIENTATION, 6), "turned or mirrored");
    put(all, "by planes", small().set(TiffDirectory.PLANES, 2), "each of its colours for itself");
    put(all, "numbers with a point", small().set(TiffDirectory.FORMAT, 3), "with a point");
    put(all, "depth of 77", small().set(TiffDirectory.DEPTH, 77), "a depth that isn't known");
    put(
        all,
        "a fax of grey",
        small().set(TiffDirectory.DEPTH, 8).set(TiffDirectory.PACKING, G4),
        "isn't black and white");
    put(
        all,
        "fax of rubbish",
        new TiffDrawn(1600, 1600).set(TiffDirectory.PACKING, G4).data(rubbish),
        "damaged after 0 of 1600 rows");
    put(
        all,
        "deflate of rubbish",
        small().set(TiffDirectory.PACKING, 8).data(rubbish),
        "damaged after 0 of 16 rows");
    put(
        all,
        "nothing packed",
        small().set(TiffDirectory.PACKING, LZW).data(new byte[0]),
        "ends after 0 of 16 rows");
    put(
        all,
        "LZW of files before TIFF 6.0",
        small().set(TiffDirectory.PACKING, LZW).data(new byte[] {0, 1, 2, 3}),
        "damaged after 0 of 16 rows");
    put(
        all,
        "deflate that ends too early",
        small().set(TiffDirectory.PACKING, 8).data(Drawn.packed(new byte[21])),
        "ends after 10 of 16 rows");
    put(
        all,
        "PackBits that ends too early",
        small().set(TiffDirectory.PACKING, PACK_BITS).data(new byte[] {-19, 0x55}),
        "ends after 10 of 16 rows");
    put(
        all,
        "LZW that ends too early",
        small().set(TiffDirectory.PACKING, LZW).data(new byte[] {(byte) 0x80, 0x15, 0x60, 0x20}),
        "ends after 0 of 16 rows");
    put(
        all,
        "a strip of far more than its points",
        small().set(TiffDirectory.PACKING, PACK_BITS).data(new byte[5000]),
        "far longer than what is packed in them");
    put(
        all,
        "gigabytes in strips of a row",
        new TiffDrawn(14_000, 14_000)
            .set(TiffDirectory.CHANNELS, 3)
            .set(TiffDirectory.TONES, 2)
            .data(shorts(3, 16, 0, 0))
            .says(TiffDirectory.DEPTH, 3, 3, 122)
            .set(TiffDirectory.STRIP_ROWS, 1),
        "MB of colours once it is unpacked");
    put(
        all,
        "a million points an inch",
        small().resolution(1_000_000, 1, 2),
        "says that it has 1000000 points an inch");
    put(
        all,
        "resolution that lies beyond the end",
        small()
            .says(TiffDirectory.ALONG, TiffDrawn.RATIONAL, 1, -20)
            .says(TiffDirectory.ACROSS, TiffDrawn.RATIONAL, 1, -20),
        "ends before its picture begins");
    return all;
  }

  /** So many of one number, and then so many of another, in two bytes each. */
  private static byte[] shorts(int count, int number, int more, int other) {
    byte[] shorts = new byte[2 * (count + more)];
    for (int i = 0; i < count + more; i++) {
      shorts[2 * i + 1] = (byte) (i < count ? number : other);
    }
    return shorts;
  }

  private static void put(Map<String, Object[]> all, String name, TiffDrawn drawn, String says) {
    all.put(name, new Object[] {drawn.file(), says});
  }

  @TestFactory
  Stream<DynamicTest> eachEndsInASentence() {
    return hostile().entrySet().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.getKey(),
                    () ->
                        assertTimeout(
                            Duration.ofSeconds(5),
                            () ->
                                assertThat(refused((byte[]) one.getValue()[0]))
                                    .contains((String) one.getValue()[1]))));
  }

  /** Its next directory is itself, and so is the one that a camera would put below it. */
  @Test
  void aSecondPageIsNotPassedOver() throws IOException {
    byte[] one = small().file();
    byte[] two = java.util.Arrays.copyOf(one, 2 * one.length);
    System.arraycopy(one, 0, two, one.length, one.length);
    int entries = java.nio.ByteBuffer.wrap(one).getShort(8);
    java.nio.ByteBuffer.wrap(two).putInt(10 + 12 * entries, one.length + 8);
    assertThat(refused(two)).contains("more than one picture");
  }

  @Test
  void directoriesThatLeadInACircleAreNotFollowed() throws IOException {
    assertThat(refused(small().set(EXIF, 8).set(330, 8).file())).isEmpty();
  }

  @Test
  void cutOffAnywhereItEndsInASentence() throws IOException {
    byte[] file = small().file();
    for (int length = 1; length < file.length; length++) {
      assertThat(refused(Arrays.copyOf(file, length))).as("%d bytes", length).isNotEmpty();
    }
  }

  @Test
  void whateverBitIsWrongItIsReadOrEndsInASentence() throws IOException {
    byte[] file = small().resolution(600, 1, 2).file();
    for (int i = 0; i < (file.length - 32) * Byte.SIZE; i++) {
      byte[] wrong = file.clone();
      wrong[i / Byte.SIZE] ^= (byte) (1 << i % Byte.SIZE);
      assertThat(refused(wrong)).as("bit %d", i).doesNotContain("null");
    }
  }
}
