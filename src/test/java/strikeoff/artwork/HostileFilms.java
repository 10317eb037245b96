package strikeoff.artwork;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Files in a film's place that are made to take long or much memory, near what is taken in: most
 * are wrong only in their last row or part.
 */
public final class HostileFilms {

  /** Points a side of the largest film that is taken in. */
  private static final int SIDE = 14_142;

  private static final int ROW = (SIDE + 7) / 8;

  /** Points a side of the largest one in RGB. */
  private static final int COLOUR_SIDE = 8_360;

  private static final int BLACK_WHITE = 1;
  private static final int LZW = 5;
  private static final int DEFLATE = 8;
  private static final int PACK_BITS = 32773;

  private HostileFilms() {}

  /** Writes a film. */
  private interface Content {
    void to(OutputStream out) throws IOException;
  }

  /** A film and a part of the sentence that it ends in. */
  private record Film(String file, Content content, String says) {}

  /**
   * Writes each into a folder.
   *
   * @return by its file's name, a part of the sentence that it ends in
   */
  public static Map<String, String> write(Path folder) throws IOException {
    Map<String, String> all = new LinkedHashMap<>();
    for (Film film : films()) {
      try (OutputStream out =
          new BufferedOutputStream(Files.newOutputStream(folder.resolve(film.file())))) {
        film.content().to(out);
      }
      all.put(film.file(), film.says());
    }
    return all;
  }

  private static Film[] films() {
    byte[] noise = new byte[20 << 20];
    new Random(18).nextBytes(noise);
    byte[] ink = new byte[ROW + 1];
    byte[] clear = new byte[ROW + 1];
    Arrays.fill(clear, 1, clear.length, (byte) 0xff);
    byte[] filtered = clear.clone();
    filtered[0] = 9;
    byte[] grey = new byte[SIDE + 1];
    byte[] unknown = grey.clone();
    unknown[SIDE] = 7;
    byte[] colour = new byte[3 * COLOUR_SIDE + 1];
    String short1 = "ends after 14141 of 14142 rows";
    return new Film[] {
      new Film("ink.png", png(SIDE, 1, 0, 0, SIDE - 1, y -> ink), short1),
      new Film(
          "noise.png",
          png(SIDE, 1, 0, 0, SIDE, y -> Arrays.copyOfRange(noise, y * 1000, y * 1000 + ROW + 1)),
          // Of each row's first byte, most are no filter.
          "no filter that the standard knows"),
      new Film(
          "points.png",
          png(SIDE, 1, 0, 0, SIDE, y -> every(y % 2 == 0 ? 0x55 : 0xaa)),
          "lines or dots a cm over its first"),
      new Film(
          "filter.png",
          png(SIDE, 1, 0, 0, SIDE, y -> y < SIDE - 1 ? clear : filtered),
          "no filter"),
      new Film("grey.png", png(SIDE, 8, 0, 0, SIDE - 1, y -> grey), short1),
      new Film(
          "palette.png", png(SIDE, 8, 3, 0, SIDE, y -> y < SIDE - 1 ? grey : unknown), "colour 7"),
      new Film(
          "colour.png",
          png(COLOUR_SIDE, 8, 2, 0, COLOUR_SIDE - 1, y -> colour),
          "ends after 8359 of 8360 rows"),
      new Film(
          "colour-more.png", png(SIDE, 8, 6, 0, 1, y -> colour), "799 MB of colours once it is"),
      new Film("interlaced.png", png(SIDE, 1, 0, 1, SIDE, y -> ink), "ends before all its points"),
      new Film("parts.png", HostileFilms::parts, "in too many parts"),
      new Film("cut.pbm", bitmap("P4 14142 14142 ", y -> every(0), SIDE - 1), short1),
      new Film("spaces.pbm", bitmap("P1 8 8 ", y -> every(' '), SIDE), "ends after 0 of 8 rows"),
      new Film("remark.pbm", bitmap("P1\n#", y -> every('x'), SIDE), "longer than the 10000"),
      new Film("lzw.tif", tiff(LZW, noise), "14142 rows; save it again"),
      new Film("deflate.tif", tiff(DEFLATE, packed(y -> clear, SIDE - 20)), "of 14142 rows"),
      new Film("pack-bits.tif", tiff(PACK_BITS, every(0x81, 0x55)), "lines or dots a cm over its"),
      new Film("cut.tif", tiff(BLACK_WHITE, new byte[ROW * (SIDE - 1)]), short1),
      new Film("runs.tif", tiff(2, noise), "damaged after 0 of 14142 rows"),
      new Film("group-3.tif", tiff(3, new byte[20 << 20]), "ends after 0 of 14142 rows"),
      new Film("group-4.tif", tiff(4, noise), "damaged after 0 of 14142 rows"),
      new Film(
          "group-4-cut.tif",
          tiff(4, Arrays.copyOfRange(every(0xff), 1, ROW)),
          "ends after 14136 of 14142 rows"),
      new Film("tags.tif", HostileFilms::tags, "has no points"),
      new Film(
          "last.svg",
          svg(
              IntStream.range(0, 49_000)
                      .mapToObj(i -> "<path d='M" + i % 100 + " " + i % 97 + "l1 1v-1z'/>")
                      .collect(Collectors.joining())
                  + "\n<text/>"),
          "line 2 “text”"),
      new Film(
          "corners.svg", svg("<path d='M0 0" + "h9".repeat(1 << 20) + "'/>"), "400000 corners"),
      new Film("copies.svg", svg(copies()), "shapes by copies of copies"),
      new Film("deep.svg", svg("<g>".repeat(1 << 20)), "100 parts in each other"),
      new Film(
          "crossing.svg",
          svg(
              IntStream.range(0, 49_000)
                  .mapToObj(i -> "L" + i * 37 % 100 + " " + i * 61 % 100)
                  .collect(
                      Collectors.joining("", "<path fill='none' stroke='#000' d='M0 0", "'/>"))),
          "cross each other"),
      new Film("layers.svg", svg("<path d='M0 0H99V99H0Z'/>".repeat(50)), "more than 40 times"),
    };
  }

  /** A row of a filter that does nothing and one byte over and over. */
  private static byte[] every(int eight) {
    byte[] row = new byte[ROW + 1];
    Arrays.fill(row, 1, row.length, (byte) eight);
    return row;
  }

  /** Two bytes in turn, enough for all rows of such runs. */
  private static byte[] every(int one, int other) {
    byte[] all = new byte[SIDE * (ROW / 128 + 1) * 2];
    for (int i = 0; i < all.length; i++) {
      all[i] = (byte) (i % 2 == 0 ? one : other);
    }
    return all;
  }

  private static byte[] packed(IntFunction<byte[]> row, int rows) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DeflaterOutputStream out =
        new DeflaterOutputStream(bytes, new Deflater(Deflater.BEST_SPEED), 1 << 16)) {
      for (int y = 0; y < rows; y++) {
        out.write(row.apply(y));
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return bytes.toByteArray();
  }

  private static Content png(
      int side, int depth, int colours, int interlace, int rows, IntFunction<byte[]> row) {
    return out -> {
      out.write(Png.SIGNATURE);
      out.write(Drawn.head(side, side, depth, colours, interlace));
      if (colours == PngSamples.PALETTE) {
        out.write(Drawn.chunk("PLTE", to -> to.write(new byte[6])));
      }
      byte[] packed = packed(row, rows);
      out.write(Drawn.chunk("IDAT", to -> to.write(packed)));
      out.write(Drawn.chunk("IEND", to -> {}));
    };
  }

  private static void parts(OutputStream out) throws IOException {
    out.write(Png.SIGNATURE);
    out.write(Drawn.head(16, 16, 1, 0, 0));
    byte[] nothing = Drawn.chunk("IDAT", to -> {});
    for (int i = 0; i < 200_000; i++) {
      out.write(nothing);
    }
  }

  private static Content bitmap(String head, IntFunction<byte[]> row, int rows) {
    return out -> {
      out.write(head.getBytes(StandardCharsets.US_ASCII));
      for (int y = 0; y < rows; y++) {
        out.write(row.apply(y), 1, ROW);
      }
    };
  }

  private static Content tiff(int packing, byte[] data) {
    return out ->
        out.write(new TiffDrawn(SIDE, SIDE).set(TiffDirectory.PACKING, packing).data(data).file());
  }

  /** All tags that there can be, none of which says how large the picture is. */
  private static void tags(OutputStream out) throws IOException {
    DataOutputStream to = new DataOutputStream(out);
    to.writeBytes("MM\0*");
    to.writeInt(8);
    to.writeShort(0xffff);
    for (int i = 0; i < 0xffff; i++) {
      to.writeShort(TiffDirectory.ACROSS);
      to.writeShort(TiffDrawn.SHORT);
      to.writeInt(1);
      to.writeInt(0);
    }
  }

  private static Content svg(String body) {
    String root =
        "<svg xmlns='http://www.w3.org/2000/svg' width='500mm' height='500mm' viewBox='0 0 100 100'>";
    return out -> out.write((root + body + "</svg>").getBytes(StandardCharsets.UTF_8));
  }

  private static String copies() {
    return "<defs><g id='a0'><path d='M0 0H1V1Z'/></g>"
        + IntStream.range(1, 14)
            .mapToObj(
                i -> "<g id='a" + i + "'>" + ("<use href='#a" + (i - 1) + "'/>").repeat(9) + "</g>")
            .collect(Collectors.joining())
        + "</defs><use href='#a13'/>";
  }
}
