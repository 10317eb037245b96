package strikeoff.artwork;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import strikeoff.plan.Artwork.Tone;
import strikeoff.units.Length;
import strikeoff.units.Pair;

/**
 * A film drawn by shapes in millimetres, from its left and its upper edge. A point is dark where
 * its middle lies in a shape; nothing is smoothed.
 */
public final class Drawn {

  static final Wanted WANTED =
      new Wanted(
          "f.png",
          Tone.DARK,
          false,
          Optional.empty(),
          new Length(0),
          new Pair(new Length(100), new Length(100)));

  private static final double INCH = 25.4;
  private static final int METRE = 1000;

  private final int columns;
  private final int rows;
  private final double perMm;
  private final boolean[][] dark;

  /**
   * @param length in mm
   * @param width in mm
   * @param perInch points an inch
   */
  public Drawn(double length, double width, double perInch) {
    this.perMm = perInch / INCH;
    this.columns = (int) Math.round(length * perMm);
    this.rows = (int) Math.round(width * perMm);
    this.dark = new boolean[rows][columns];
  }

  /** True of places that a shape covers, in mm. */
  @FunctionalInterface
  public interface Shape {
    boolean covers(double x, double y);
  }

  /** Its points as they are measured. */
  Bits bits() {
    Bits bits = new Bits(columns, rows);
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < columns; x++) {
        if (isDark(x, y)) {
          bits.set(x, y);
        }
      }
    }
    return bits;
  }

  /** The same with a shape more. */
  public Drawn with(Shape shape) {
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < columns; x++) {
        dark[y][x] |= shape.covers((x + 0.5) / perMm, (y + 0.5) / perMm);
      }
    }
    return this;
  }

  public static Shape disc(double x, double y, double diameter) {
    return (px, py) -> Math.hypot(px - x, py - y) <= diameter / 2;
  }

  /** A bar with square ends, its middle at a place, turned by degrees. */
  public static Shape bar(double x, double y, double length, double width, double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    return (px, py) -> {
      double along = (px - x) * cos + (py - y) * sin;
      double across = (py - y) * cos - (px - x) * sin;
      return Math.abs(along) <= length / 2 && Math.abs(across) <= width / 2;
    };
  }

  /** A wedge from its tip, widening by an angle, that runs in a direction. */
  public static Shape wedge(double x, double y, double length, double angle, double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    double half = Math.tan(Math.toRadians(angle / 2));
    return (px, py) -> {
      double along = (px - x) * cos + (py - y) * sin;
      double across = (py - y) * cos - (px - x) * sin;
      return along >= 0 && along <= length && Math.abs(across) <= along * half;
    };
  }

  /**
   * A halftone as a photograph is screened: a wave in two directions at right angles, cut off at
   * the height at which it leaves the tone.
   *
   * @param perCm rows of dots a cm
   * @param degrees how far they are turned
   * @param tone how much of a place is covered, 0 to 1
   */
  public static Shape halftone(double perCm, double degrees, DoubleBinaryOperator tone) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    double turn = 2 * Math.PI * perCm / 10;
    return (x, y) -> {
      double wave = Math.cos((x * cos + y * sin) * turn) + Math.cos((y * cos - x * sin) * turn);
      double covered = tone.applyAsDouble(x, y) * (WAVE.length - 1);
      return wave > WAVE[(int) Math.max(0, Math.min(WAVE.length - 1, covered))];
    };
  }

  /** Such a wave's heights, from the highest: a share of them is that share of its area. */
  private static final double[] WAVE = wave();

  private static double[] wave() {
    int steps = 300;
    double[] heights = new double[steps * steps];
    for (int i = 0; i < heights.length; i++) {
      heights[i] =
          -Math.cos(2 * Math.PI * (i % steps + 0.5) / steps)
              - Math.cos(2 * Math.PI * (i / steps + 0.5) / steps);
    }
    Arrays.sort(heights);
    for (int i = 0; i < heights.length; i++) {
      heights[i] = -heights[i];
    }
    return heights;
  }

  /** A pointed leaf between two arcs, upright. */
  public static Shape leaf(double x, double y, double length, double width) {
    double half = length / 2;
    double radius = (half * half + width * width / 4) / width;
    double back = radius - width / 2;
    return (px, py) ->
        Math.hypot(px - x + back, py - y) <= radius && Math.hypot(px - x - back, py - y) <= radius;
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  boolean isDark(int x, int y) {
    return dark[y][x];
  }

  /** A file as it is read for a separation of 10 x 10 cm. */
  static Picture picture(byte[] file) throws IOException, UnreadablePicture {
    Pair size = new Pair(new Length(100), new Length(100));
    Wanted wanted = new Wanted("f.png", Tone.DARK, false, Optional.empty(), new Length(0), size);
    return Pictures.head(new ByteArrayInputStream(file), wanted);
  }

  /** As PNG of one bit a point, which says its resolution. */
  public byte[] png() {
    return png(1, false, perMm * METRE);
  }

  /** The same that says another size: as it comes out of a printer that fits it to its paper. */
  public byte[] pngScaled(double scale) {
    return png(1, false, perMm * METRE / scale);
  }

  /** The same that says nothing of its size. */
  public byte[] pngSilent() {
    return png(1, false, 0);
  }

  /** As PNG in grey of 1 to 16 bits, with each of the filters in turn if wanted. */
  byte[] png(int depth, boolean filtered, double perMetre) {
    int rowBytes = (columns * depth + 7) / 8;
    byte[] raw = new byte[(rowBytes + 1) * rows];
    byte[] above = new byte[rowBytes];
    for (int y = 0; y < rows; y++) {
      byte[] row = new byte[rowBytes];
      for (int x = 0; x < columns; x++) {
        for (int bit = 0; bit < depth && !dark[y][x]; bit++) {
          int at = x * depth + bit;
          row[at >> 3] |= (byte) (0x80 >> (at & 7));
        }
      }
      int filter = filtered ? y % 5 : 0;
      raw[y * (rowBytes + 1)] = (byte) filter;
      filter(row, above, Math.max(1, depth / 8), filter, raw, y * (rowBytes + 1) + 1);
      above = row;
    }
    return file(columns, rows, depth, 0, 0, raw, perMetre);
  }

  /** Filters a row as the standard has it (ISO/IEC 15948, clause 9.2). */
  private static void filter(byte[] row, byte[] above, int back, int filter, byte[] raw, int to) {
    for (int i = 0; i < row.length; i++) {
      int left = i >= back ? row[i - back] & 0xff : 0;
      int up = above[i] & 0xff;
      int both = i >= back ? above[i - back] & 0xff : 0;
      int p = left + up - both;
      int paeth =
          Math.abs(p - left) <= Math.abs(p - up) && Math.abs(p - left) <= Math.abs(p - both)
              ? left
              : Math.abs(p - up) <= Math.abs(p - both) ? up : both;
      int guess =
          switch (filter) {
            case 1 -> left;
            case 2 -> up;
            case 3 -> (left + up) / 2;
            case 4 -> paeth;
            default -> 0;
          };
      raw[to + i] = (byte) (row[i] - guess);
    }
  }

  /** A PNG file around rows of bytes, each with its filter in front. */
  static byte[] file(
      int columns, int rows, int depth, int colours, int interlace, byte[] raw, double perMetre) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(Png.SIGNATURE);
    bytes.writeBytes(head(columns, rows, depth, colours, interlace));
    if (perMetre > 0) {
      int whole = (int) Math.round(perMetre);
      bytes.writeBytes(
          chunk(
              "pHYs",
              out -> {
                out.writeInt(whole);
                out.writeInt(whole);
                out.writeByte(1);
              }));
    }
    bytes.writeBytes(chunk("IDAT", out -> out.write(packed(raw))));
    bytes.writeBytes(chunk("IEND", out -> {}));
    return bytes.toByteArray();
  }

  static byte[] head(int columns, int rows, int depth, int colours, int interlace) {
    return chunk(
        "IHDR",
        out -> {
          out.writeInt(columns);
          out.writeInt(rows);
          out.write(new byte[] {(byte) depth, (byte) colours, 0, 0, (byte) interlace});
        });
  }

  static byte[] packed(byte[] raw) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Deflater best = new Deflater(Deflater.BEST_COMPRESSION);
    try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, best)) {
      out.write(raw);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    best.end();
    return bytes.toByteArray();
  }

  /** Writes what a chunk holds. */
  @FunctionalInterface
  interface Content {
    void to(DataOutputStream out) throws IOException;
  }

  static byte[] chunk(String type, Content content) {
    try {
      ByteArrayOutputStream body = new ByteArrayOutputStream();
      DataOutputStream in = new DataOutputStream(body);
      in.write(type.getBytes(StandardCharsets.ISO_8859_1));
      content.to(in);
      CRC32 sum = new CRC32();
      sum.update(body.toByteArray());
      ByteArrayOutputStream all = new ByteArrayOutputStream();
      DataOutputStream out = new DataOutputStream(all);
      out.writeInt(body.size() - 4);
      out.write(body.toByteArray());
      out.writeInt((int) sum.getValue());
      return all.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** As binary PBM. */
  byte[] pbm() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(
        ("P4\n# drawn\n" + columns + " " + rows + "\n").getBytes(StandardCharsets.US_ASCII));
    for (int y = 0; y < rows; y++) {
      byte[] row = new byte[(columns + 7) / 8];
      for (int x = 0; x < columns; x++) {
        row[x >> 3] |= (byte) (dark[y][x] ? 0x80 >> (x & 7) : 0);
      }
      bytes.writeBytes(row);
    }
    return bytes.toByteArray();
  }
}
