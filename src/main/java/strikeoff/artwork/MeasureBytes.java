package strikeoff.artwork;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.Artwork.Fine;
import strikeoff.plan.Artwork.Finest;
import strikeoff.plan.Artwork.Tones;
import strikeoff.plan.FilmFit;
import strikeoff.plan.Joint;
import strikeoff.plan.Joint.Rim;
import strikeoff.plan.Joint.Side;
import strikeoff.plan.Joint.Strips;
import strikeoff.plan.PrintedCells;
import strikeoff.plan.Traced;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.Length;
import strikeoff.units.MeshCount;
import strikeoff.units.Share;

/** Measures as bytes and back, to the last bit of each number. */
final class MeasureBytes {

  private MeasureBytes() {}

  /** Writes to a stream, or reads from one. */
  @FunctionalInterface
  private interface Part<S, T> {
    T with(S stream) throws IOException;
  }

  private static byte[] written(Part<DataOutputStream, Object> part) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      part.with(out);
    } catch (IOException e) {
      throw new UncheckedIOException("memory takes all", e);
    }
    return bytes.toByteArray();
  }

  /** Empty for bytes that hold none: of another version, torn, or made by somebody. */
  private static <T> Optional<T> read(byte[] bytes, Part<DataInputStream, T> part) {
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      T read = part.with(in);
      return in.available() == 0 ? Optional.of(read) : Optional.empty();
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  static byte[] of(PictureMeasures measures) {
    return written(
        out -> {
          out.writeInt(measures.columns());
          out.writeInt(measures.rows());
          out.writeLong(measures.open());
          longs(out, measures.tones().counts());
          out.writeInt(measures.left());
          out.writeInt(measures.top());
          out.writeInt(measures.right());
          out.writeInt(measures.bottom());
          cells(out, measures.cells());
          optional(out, measures.halftone(), (to, ruling) -> to.writeDouble(ruling.perCm()));
          optional(out, measures.fine(), MeasureBytes::fine);
          out.writeDouble(measures.mirrorApart());
          optional(out, measures.traced(), MeasureBytes::traced);
          return out;
        });
  }

  static Optional<PictureMeasures> picture(byte[] bytes) {
    return read(
        bytes,
        in ->
            new PictureMeasures(
                in.readInt(),
                in.readInt(),
                in.readLong(),
                new Tones(longs(in)),
                in.readInt(),
                in.readInt(),
                in.readInt(),
                in.readInt(),
                cells(in),
                optional(in, from -> new MeshCount(from.readDouble())),
                optional(in, MeasureBytes::fine),
                in.readDouble(),
                optional(in, MeasureBytes::traced)));
  }

  static byte[] of(Joint joint) {
    return written(
        out -> {
          out.writeDouble(joint.point().mm());
          optional(out, joint.lap(), MeasureBytes::finest);
          optional(out, joint.wideLap(), MeasureBytes::finest);
          out.writeDouble(joint.lapped().mm());
          optional(out, joint.gap(), MeasureBytes::finest);
          optional(out, joint.butt(), MeasureBytes::finest);
          optional(out, joint.gapUpTo(), MeasureBytes::strips);
          optional(out, joint.fit(), MeasureBytes::fit);
          out.writeDouble(joint.both().squareCm());
          for (Side side : new Side[] {joint.ofOne(), joint.ofOther()}) {
            out.writeDouble(side.inside().squareCm());
            out.writeDouble(side.bare().squareCm());
            optional(out, side.wide(), MeasureBytes::mm);
            optional(out, side.rim(), MeasureBytes::rim);
          }
          return out;
        });
  }

  static Optional<Joint> joint(byte[] bytes) {
    return read(
        bytes,
        in ->
            new Joint(
                1,
                2,
                length(in),
                optional(in, MeasureBytes::finest),
                optional(in, MeasureBytes::finest),
                length(in),
                optional(in, MeasureBytes::finest),
                optional(in, MeasureBytes::finest),
                optional(in, from -> new Strips(length(from), length(from))),
                optional(in, MeasureBytes::fit),
                area(in),
                side(in),
                side(in)));
  }

  private static Side side(DataInputStream in) throws IOException {
    return new Side(
        area(in),
        area(in),
        optional(in, MeasureBytes::length),
        optional(
            in, from -> new Rim(length(from), length(from), optional(from, MeasureBytes::length))));
  }

  private static void rim(DataOutputStream out, Rim rim) throws IOException {
    mm(out, rim.width());
    mm(out, rim.over());
    optional(out, rim.line(), MeasureBytes::mm);
  }

  private static void mm(DataOutputStream out, Length length) throws IOException {
    out.writeDouble(length.mm());
  }

  private static void strips(DataOutputStream out, Strips strips) throws IOException {
    out.writeDouble(strips.widest().mm());
    out.writeDouble(strips.over().mm());
  }

  private static void fit(DataOutputStream out, FilmFit fit) throws IOException {
    out.writeDouble(fit.edge().mm());
    out.writeDouble(fit.facing().mm());
    out.writeDouble(fit.facingMoved().mm());
    out.writeDouble(fit.right().mm());
    out.writeDouble(fit.far().mm());
    out.writeDouble(fit.scale().fraction());
    out.writeDouble(fit.skew().degrees());
    out.writeDouble(fit.spread().mm());
    out.writeDouble(fit.spreadMoved().mm());
    out.writeDouble(fit.half().mm());
    out.writeDouble(fit.halfMoved().mm());
    out.writeDouble(fit.lap().mm());
    out.writeDouble(fit.elsewhere().mm());
    turned(out, fit.over());
    turned(out, fit.upended());
    turned(out, fit.round());
  }

  private static void turned(DataOutputStream out, FilmFit.Turned turned) throws IOException {
    out.writeDouble(turned.facing().mm());
    out.writeDouble(turned.spread().mm());
    out.writeDouble(turned.half().mm());
  }

  private static FilmFit.Turned turned(DataInputStream in) throws IOException {
    return new FilmFit.Turned(length(in), length(in), length(in));
  }

  private static FilmFit fit(DataInputStream in) throws IOException {
    return new FilmFit(
        length(in),
        length(in),
        length(in),
        length(in),
        length(in),
        new Share(in.readDouble()),
        new Angle(in.readDouble()),
        length(in),
        length(in),
        length(in),
        length(in),
        length(in),
        length(in),
        turned(in),
        turned(in),
        turned(in));
  }

  private static void fine(DataOutputStream out, Fine fine) throws IOException {
    out.writeDouble(fine.point().mm());
    optional(out, fine.line(), MeasureBytes::finest);
    optional(out, fine.gap(), MeasureBytes::finest);
    out.writeInt(fine.tips());
    out.writeDouble(fine.tipLength());
    longs(out, fine.specks());
  }

  private static Fine fine(DataInputStream in) throws IOException {
    return new Fine(
        length(in),
        optional(in, MeasureBytes::finest),
        optional(in, MeasureBytes::finest),
        in.readInt(),
        in.readDouble(),
        longs(in));
  }

  private static void finest(DataOutputStream out, Finest finest) throws IOException {
    out.writeDouble(finest.width().mm());
    out.writeDouble(finest.over().mm());
    out.writeDouble(finest.x().mm());
    out.writeDouble(finest.y().mm());
  }

  private static Finest finest(DataInputStream in) throws IOException {
    return new Finest(length(in), length(in), length(in), length(in));
  }

  private static void cells(DataOutputStream out, PrintedCells cells) throws IOException {
    out.writeDouble(cells.length());
    out.writeDouble(cells.width());
    out.writeDouble(cells.cellLength());
    out.writeDouble(cells.cellWidth());
    out.writeInt(cells.columns() * cells.rows());
    for (int row = 0; row < cells.rows(); row++) {
      for (int column = 0; column < cells.columns(); column++) {
        out.writeByte(cells.share(column, row));
      }
    }
  }

  private static PrintedCells cells(DataInputStream in) throws IOException {
    double length = in.readDouble();
    double width = in.readDouble();
    double cellLength = in.readDouble();
    double cellWidth = in.readDouble();
    byte[] shares = new byte[count(in, Byte.BYTES)];
    in.readFully(shares);
    return new PrintedCells(length, width, cellLength, cellWidth, shares);
  }

  private static void traced(DataOutputStream out, Traced traced) throws IOException {
    int[][] rings = traced.rings();
    out.writeDouble(traced.step());
    out.writeInt(rings.length);
    for (int[] ring : rings) {
      out.writeInt(ring.length);
      for (int at : ring) {
        out.writeInt(at);
      }
    }
  }

  private static Traced traced(DataInputStream in) throws IOException {
    double step = in.readDouble();
    int[][] rings = new int[count(in, Integer.BYTES)][];
    for (int i = 0; i < rings.length; i++) {
      rings[i] = new int[count(in, Integer.BYTES)];
      for (int j = 0; j < rings[i].length; j++) {
        rings[i][j] = in.readInt();
      }
    }
    return new Traced(step, rings);
  }

  private static void longs(DataOutputStream out, List<Long> all) throws IOException {
    out.writeInt(all.size());
    for (long one : all) {
      out.writeLong(one);
    }
  }

  private static List<Long> longs(DataInputStream in) throws IOException {
    int count = count(in, Long.BYTES);
    List<Long> all = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      all.add(in.readLong());
    }
    return all;
  }

  /** No more than there are bytes for. */
  private static int count(DataInputStream in, int bytesEach) throws IOException {
    int count = in.readInt();
    if (count < 0 || count > in.available() / bytesEach) {
      throw new IOException("more than is there");
    }
    return count;
  }

  /** Writes a part. */
  @FunctionalInterface
  private interface Writing<T> {
    void to(DataOutputStream out, T part) throws IOException;
  }

  private static <T> void optional(DataOutputStream out, Optional<T> part, Writing<T> writing)
      throws IOException {
    out.writeBoolean(part.isPresent());
    if (part.isPresent()) {
      writing.to(out, part.get());
    }
  }

  private static <T> Optional<T> optional(DataInputStream in, Part<DataInputStream, T> part)
      throws IOException {
    return in.readBoolean() ? Optional.of(part.with(in)) : Optional.empty();
  }

  private static Length length(DataInputStream in) throws IOException {
    return new Length(in.readDouble());
  }

  private static Area area(DataInputStream in) throws IOException {
    return new Area(in.readDouble());
  }
}
