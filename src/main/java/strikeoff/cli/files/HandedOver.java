package strikeoff.cli.files;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Set;
import strikeoff.cli.text.FileNames;

/**
 * What a shell opened and hands over: standard input, and what {@code <(…)} writes, which it names
 * {@code /dev/fd/63}. Other pipes and devices are no plans, and may never end.
 */
final class HandedOver {

  private static final Path STANDARD_INPUT = Path.of("/dev/stdin");

  private static final Set<Path> OUTPUTS = Set.of(Path.of("/dev/stdout"), Path.of("/dev/stderr"));

  private HandedOver() {}

  /** True for the name of something that a shell hands over, whether it is open or not. */
  static boolean is(Path path) {
    Path whole = path.toAbsolutePath().normalize();
    return whole.equals(STANDARD_INPUT)
        || whole.startsWith("/dev/fd")
        || whole.startsWith("/proc/self/fd");
  }

  /** The same for what is written, as by {@code >(…)}. */
  static boolean takes(Path path) {
    return is(path) || OUTPUTS.contains(path.toAbsolutePath().normalize());
  }

  /**
   * True if nobody handed it over: the first file that the JDK opens for itself has the first
   * number that is free.
   */
  static boolean isOurOwn(Path path) {
    try {
      Path file = path.toRealPath();
      if (file.startsWith(Path.of(System.getProperty("java.home")).toRealPath())) {
        return true;
      }
      Path jar =
          Path.of(HandedOver.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return file.getParent().equals(jar.toRealPath().getParent())
          && FileNames.last(file).matches("strikeoff\\.(jar|jsa|aot)");
    } catch (IOException | URISyntaxException | RuntimeException e) {
      // A pipe is no path, and some systems have no such list.
      return false;
    }
  }
}
