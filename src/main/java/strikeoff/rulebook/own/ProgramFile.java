package strikeoff.rulebook.own;

import java.io.EOFException;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.HexFormat;

/** Tells one build of the program from another, by what is in its jar. */
final class ProgramFile {

  /** Marks the end record of a zip file (APPNOTE 6.3.9, §4.3.16), which has 22 bytes. */
  private static final int END = 0x06054b50;

  private static final int END_SIZE = 22;

  private ProgramFile() {}

  /**
   * The digest of the jar's directory, which holds size and check sum of everything in it: a
   * hundredth of reading it all. Where the program isn't a jar its version must do.
   */
  static String digest() {
    String version = String.valueOf(ProgramFile.class.getPackage().getImplementationVersion());
    CodeSource code = ProgramFile.class.getProtectionDomain().getCodeSource();
    try {
      Path jar = code == null ? null : Path.of(code.getLocation().toURI());
      return jar != null && Files.isRegularFile(jar) ? version + " " + digest(jar) : version;
    } catch (IOException | URISyntaxException | IllegalArgumentException e) {
      return version;
    }
  }

  static String digest(Path jar) throws IOException {
    try (SeekableByteChannel file = Files.newByteChannel(jar)) {
      int tail = (int) Math.min(file.size(), 0xffff + END_SIZE);
      ByteBuffer end = read(file, file.size() - tail, tail);
      for (int at = tail - END_SIZE; at >= 0; at--) {
        if (end.getInt(at) == END) {
          long size = Integer.toUnsignedLong(end.getInt(at + 12));
          long from = Integer.toUnsignedLong(end.getInt(at + 16));
          ByteBuffer directory = read(file, from, Math.toIntExact(size));
          return HexFormat.of().formatHex(Digest.of(directory.array()));
        }
      }
    } catch (ArithmeticException | IllegalArgumentException e) {
      throw new IOException("no zip file", e);
    }
    throw new IOException("no zip file");
  }

  private static ByteBuffer read(SeekableByteChannel file, long from, int size) throws IOException {
    if (from < 0 || from + size > file.size()) {
      throw new EOFException();
    }
    ByteBuffer bytes = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    file.position(from);
    while (bytes.hasRemaining()) {
      if (file.read(bytes) < 0) {
        throw new EOFException();
      }
    }
    return bytes;
  }
}
