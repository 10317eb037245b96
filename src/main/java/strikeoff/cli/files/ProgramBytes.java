package strikeoff.cli.files;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Which program this is, to the byte. */
public final class ProgramBytes {

  /** Of a zip file's end, as APPNOTE.TXT has it in section 4.3.16. */
  private static final int END = 0x06054b50;

  private static final int END_LENGTH = 22;

  /** It doesn't change while it runs. */
  private static byte[] known;

  private ProgramBytes() {}

  /**
   * Adds the program to a key. Of a jar that is its directory, in which the size and the CRC-32 of
   * every entry stand: whoever would forge that has the program in hand anyway.
   *
   * @throws IOException if nobody can tell; then nothing may be kept
   */
  public static synchronized void into(CacheKey key) throws IOException {
    if (known == null) {
      known = digest().bytes();
    }
    key.put("program", known);
  }

  private static CacheKey digest() throws IOException {
    CacheKey key = new CacheKey();
    Path from;
    try {
      from =
          Path.of(ProgramBytes.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException | RuntimeException e) {
      throw new IOException("the program doesn't know where it lies", e);
    }
    if (Files.isDirectory(from)) {
      classes(from, key);
    } else {
      key.put("jar", directory(from));
    }
    return key;
  }

  private static byte[] directory(Path jar) throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(jar.toFile(), "r")) {
      long length = file.length();
      byte[] end = new byte[END_LENGTH];
      file.seek(Math.max(0, length - END_LENGTH));
      file.readFully(end);
      long from = little(end, 16);
      if (little(end, 0) != END || from > length || length - from > Integer.MAX_VALUE) {
        // With a comment behind it, or larger than any jar of ours.
        return Files.readAllBytes(jar);
      }
      byte[] directory = new byte[(int) (length - from)];
      file.seek(from);
      file.readFully(directory);
      return directory;
    }
  }

  private static long little(byte[] bytes, int at) {
    return (bytes[at] & 0xFFL)
        | (bytes[at + 1] & 0xFFL) << 8
        | (bytes[at + 2] & 0xFFL) << 16
        | (bytes[at + 3] & 0xFFL) << 24;
  }

  /** As they lie while the program is being made. */
  private static void classes(Path folder, CacheKey key) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      List<Path> files = walk.filter(Files::isRegularFile).sorted().toList();
      for (Path file : files) {
        key.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
