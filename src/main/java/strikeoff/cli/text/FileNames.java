package strikeoff.cli.text;

import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/**
 * Names of files as people write them, in UTF-8 whatever the locale. Where that is C, as it often
 * is in a container, the platform can neither read nor make a path with a letter beyond ASCII,
 * while as a URI it has and takes every byte of it.
 */
public final class FileNames {

  /** Stands for what the platform could not read. */
  private static final char LOST = '\uFFFD';

  private FileNames() {}

  /** True if the platform lost letters of the name, so that no file can be found by it. */
  public static boolean isLost(String name) {
    return name.indexOf(LOST) >= 0;
  }

  /** The last part of a path; empty if it has none. */
  public static String last(Path path) {
    Path last = path.getFileName();
    if (last == null) {
      return "";
    }
    if (!isLost(last.toString())) {
      return last.toString();
    }
    String whole = withoutSlash(path.toUri().getPath());
    return whole.substring(whole.lastIndexOf('/') + 1);
  }

  /** A path as people write it. */
  public static String text(Path path) {
    return isLost(path.toString()) ? withoutSlash(path.toUri().getPath()) : path.toString();
  }

  /**
   * The path of a name that is meant from a folder on.
   *
   * @throws InvalidPathException if nothing can be called so
   */
  public static Path resolve(Path folder, String name) {
    try {
      return folder.resolve(name);
    } catch (InvalidPathException e) {
      if (isLost(name) || name.indexOf('\0') >= 0) {
        throw e;
      }
      return byBytes(folder, name);
    }
  }

  private static Path byBytes(Path folder, String name) {
    StringBuilder address = new StringBuilder("file://");
    if (!name.startsWith("/")) {
      address.append(withoutSlash(folder.toAbsolutePath().toUri().getRawPath()));
    }
    for (String part : name.split("/")) {
      if (!part.isEmpty()) {
        address.append('/').append(escaped(part).replace("+", "%20"));
      }
    }
    return Path.of(URI.create(address.toString()));
  }

  private static String escaped(String part) {
    return URLEncoder.encode(part, StandardCharsets.UTF_8);
  }

  private static String withoutSlash(String path) {
    return path.length() > 1 && path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
  }

  /** The name as it is, or in letters that every locale has, for patterns and what they match. */
  public static String sayable(String name) {
    Charset names = Charset.forName(System.getProperty("sun.jnu.encoding", "UTF-8"));
    if (names.newEncoder().canEncode(name)) {
      return name;
    }
    StringBuilder ascii = new StringBuilder();
    name.codePoints()
        .forEach(
            point -> {
              String letter = Character.toString(point);
              ascii.append(point < 0x80 ? letter : escaped(letter));
            });
    return ascii.toString();
  }
}
