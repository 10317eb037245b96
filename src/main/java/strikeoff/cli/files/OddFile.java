package strikeoff.cli.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Says what stands where a file is looked for, if it is none. */
public final class OddFile {

  /** Said of a link that was found and isn't followed. */
  static final String LEADS_OUT = "it is a link out of its folder, and is not followed";

  // As POSIX has them in st_mode.
  private static final int KIND = 0170000;
  private static final int PIPE = 0010000;

  private OddFile() {}

  /** The same for a file that was named, as may be what a shell hands over. */
  public static Optional<String> whatNamed(Path path) {
    if (!HandedOver.is(path)) {
      return what(path);
    }
    return HandedOver.isOurOwn(path)
        ? Optional.of("nothing is handed over here, or it was closed")
        : Optional.empty();
  }

  /**
   * The same for a file that was found beside others: somebody who hands in a folder must not have
   * files read that are no part of it.
   *
   * @param folder what it must lie in
   */
  static Optional<String> whatFound(Path path, Path folder) {
    return what(path).or(() -> leadsOut(path, folder) ? Optional.of(LEADS_OUT) : Optional.empty());
  }

  /** True for a link to something that doesn't lie in the folder. */
  static boolean leadsOut(Path path, Path folder) {
    try {
      return Files.isSymbolicLink(path) && !path.toRealPath().startsWith(folder.toRealPath());
    } catch (IOException e) {
      // Nobody can say where it leads.
      return true;
    }
  }

  /** True for a pipe with a name: to open one waits until another program does. */
  static boolean isPipe(Path path) {
    try {
      return (((Integer) Files.getAttribute(path, "unix:mode")) & KIND) == PIPE;
    } catch (IOException | UnsupportedOperationException | IllegalArgumentException e) {
      // It isn't there, or this system has none.
      return false;
    }
  }

  /** As {@code it is a link that leads nowhere}; empty if it is a file, or nothing stands there. */
  static Optional<String> what(Path path) {
    if (Files.isRegularFile(path)) {
      return Optional.empty();
    }
    if (Files.isDirectory(path)) {
      return Optional.of("it is a folder");
    }
    if (Files.exists(path)) {
      return Optional.of("it is a pipe or a device");
    }
    return Files.isSymbolicLink(path)
        ? Optional.of("it is a link that leads nowhere")
        : Optional.empty();
  }
}
