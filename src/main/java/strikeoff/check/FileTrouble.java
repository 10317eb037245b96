package strikeoff.check;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Says why a file could not be read or written, without the paths that exceptions begin with. */
public final class FileTrouble {

  private FileTrouble() {}

  /**
   * A sentence on what is made of a plan.
   *
   * @param what it is, such as {@code report}
   */
  public static String unwritten(String plan, String what, String file, IOException e) {
    return plan + ": its " + what + " (" + file + ") can't be written: " + of(e);
  }

  /** A few words that go on after a colon. */
  public static String of(IOException e) {
    if (e instanceof FileAlreadyExistsException) {
      return "a file stands in the folder's place";
    }
    if (e instanceof AccessDeniedException) {
      return "no permission";
    }
    if (e instanceof NoSuchFileException) {
      return "it isn't there, or not any more";
    }
    if (e instanceof FileSystemException f && f.getReason() != null) {
      return f.getReason();
    }
    return String.valueOf(e.getMessage());
  }
}
