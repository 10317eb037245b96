package strikeoff.artwork;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** Tells pictures by their first bytes, whatever their names end with. */
final class Pictures {

  private static final int LONGEST_START = 8;
  private static final int AT_ONCE = 1 << 16;

  /** What people save films as besides, by how such files begin. */
  private static final Map<String, String> OTHERS = new LinkedHashMap<>();

  static {
    OTHERS.put(
        "\u00ff\u00d8\u00ff", "a JPEG file, and JPEG blurs edges; save the film as PNG or TIFF");
    OTHERS.put("GIF8", "a GIF file; save the film as PNG or TIFF");
    OTHERS.put("BM", "a BMP file; save the film as PNG or TIFF");
    OTHERS.put("%PDF", "a PDF file; save each of its films as PNG or TIFF");
    OTHERS.put("%!PS", "a PostScript file; save the film as PNG or TIFF");
    OTHERS.put("8BPS", "a file with layers; save the film as PNG or TIFF");
    OTHERS.put("RIFF", "a WebP file; save the film as PNG or TIFF");
    OTHERS.put("P5", "a picture in grey (PGM); save the film as PNG, TIFF or PBM");
    OTHERS.put("P2", "a picture in grey (PGM); save the film as PNG, TIFF or PBM");
    OTHERS.put("P6", "a picture in colour (PPM); save the film as PNG, TIFF or PBM");
    OTHERS.put("P3", "a picture in colour (PPM); save the film as PNG, TIFF or PBM");
    OTHERS.put("II+\0", "a BigTIFF file; save the film as plain TIFF or as PNG");
    OTHERS.put("MM\0+", "a BigTIFF file; save the film as plain TIFF or as PNG");
    OTHERS.put("\u00ff\u00fe", "text in UTF-16; save a drawing as SVG in UTF-8");
    OTHERS.put("\u00fe\u00ff", "text in UTF-16; save a drawing as SVG in UTF-8");
    OTHERS.put("\u001f\u008b", "a packed file (gzip); save a drawing as plain SVG");
  }

  private Pictures() {}

  /**
   * Reads a picture's head.
   *
   * @param wanted for a drawing, which has no points of its own
   */
  static Picture head(InputStream in, Wanted wanted) throws IOException, UnreadablePicture {
    ByteSource bytes = new ByteSource(in);
    byte[] start = new byte[2];
    int read = bytes.some(start, 0, 2);
    String first = new String(start, 0, read, StandardCharsets.ISO_8859_1);
    if (first.equals("P4") || first.equals("P1")) {
      return Pbm.of(bytes, first.equals("P1"));
    }
    byte[] all = Arrays.copyOf(start, LONGEST_START);
    int more = bytes.some(all, 2, LONGEST_START - 2);
    if (Arrays.equals(all, Png.SIGNATURE)) {
      return Png.of(bytes);
    }
    String begins = new String(all, 0, read + more, StandardCharsets.ISO_8859_1);
    if (begins.isEmpty()) {
      throw new UnreadablePicture("this file is empty; save the film again, or name another");
    }
    if (begins.startsWith("II*\0") || begins.startsWith("MM\0*")) {
      return Tiff.of(in instanceof FilmParts parts ? parts : FilmParts.of(whole(begins, in)));
    }
    if (begins.matches("(?s)(\u00ef\u00bb\u00bf)?\\s*<[?!a-zA-Z].*")) {
      SvgDrawing.requireSize((long) begins.length() + in.available());
      return SvgDrawing.of(whole(begins, in), wanted);
    }
    if (begins.matches("(?s)(\u00ff\u00fe|\u00fe\u00ff|<\0|\0<).*")) {
      throw new UnreadablePicture(
          "this is a text in UTF-16; save a drawing as SVG in UTF-8, or the film as PNG or TIFF");
    }
    for (Map.Entry<String, String> other : OTHERS.entrySet()) {
      if (begins.startsWith(other.getKey())) {
        throw new UnreadablePicture("this is " + other.getValue());
      }
    }
    throw new UnreadablePicture(
        "this is no picture that is known; save the film as PNG, TIFF or PBM");
  }

  /** A file that is read here and there, with what was read of it already; its size is bounded. */
  private static byte[] whole(String start, InputStream in) throws IOException {
    byte[] first = start.getBytes(StandardCharsets.ISO_8859_1);
    byte[] file = Arrays.copyOf(first, first.length + in.available());
    int read = first.length;
    while (true) {
      if (read == file.length) {
        int next = in.read();
        if (next < 0) {
          return file;
        }
        file = Arrays.copyOf(file, file.length + AT_ONCE);
        file[read++] = (byte) next;
      }
      // A part at a time, or the JDK lays as much memory beside.
      int more = in.read(file, read, Math.min(AT_ONCE, file.length - read));
      if (more < 0) {
        return Arrays.copyOf(file, read);
      }
      read += more;
    }
  }
}
