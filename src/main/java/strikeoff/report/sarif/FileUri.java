package strikeoff.report.sarif;

import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Writes a file's name as the user gave it as a URI reference (RFC 3986): relative names stay
 * relative, absolute ones get the scheme {@code file}.
 */
final class FileUri {

  private static final String PLAIN =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/!$'()*+,;=@";

  private FileUri() {}

  /**
   * @param folder where the program runs, absolute: what lies below it is named from there, so that
   *     a log means the same in another checkout
   */
  static String of(String file, Path folder) {
    try {
      Path path = Path.of(file).normalize();
      return path.isAbsolute() && path.startsWith(folder) && !path.equals(folder)
          ? of(folder.relativize(path).toString())
          : of(file);
    } catch (InvalidPathException e) {
      // Results of another system, read back, may name what is no path here.
      return of(file);
    }
  }

  static String of(String file) {
    String name = file.replace('\\', '/');
    while (name.startsWith("./")) {
      name = name.substring(2);
    }
    StringBuilder uri = new StringBuilder();
    if (name.matches("[A-Za-z]:/.*")) {
      uri.append("file:///");
    } else if (name.startsWith("/")) {
      uri.append("file://");
    }
    for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
      if (b > 0 && PLAIN.indexOf(b) >= 0) {
        uri.append((char) b);
      } else {
        uri.append('%').append(String.format(Locale.ROOT, "%02X", b));
      }
    }
    return uri.toString();
  }
}
