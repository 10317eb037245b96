package strikeoff.report.sarif;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Writes a file's name as the user gave it as a URI reference (RFC 3986): relative names stay
 * relative, absolute ones get the scheme {@code file}.
 */
final class FileUri {

  private static final String PLAIN =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/!$'()*+,;=@";

  private FileUri() {}

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
