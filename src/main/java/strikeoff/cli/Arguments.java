package strikeoff.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import strikeoff.cli.text.FileNames;

/** The words of the command line as they were written. */
final class Arguments {

  private static final Path WHOLE_LINE = Path.of("/proc/self/cmdline");

  private Arguments() {}

  /** Words in which the locale has no letters for what was written are read again as UTF-8. */
  static String[] asWritten(String[] read) {
    if (Arrays.stream(read).noneMatch(FileNames::isLost)) {
      return read;
    }
    try {
      String line = new String(Files.readAllBytes(WHOLE_LINE), StandardCharsets.UTF_8);
      // Every word ends with a zero, also an empty one.
      String[] words = line.split("\0", -1);
      int first = words.length - 1 - read.length;
      if (first < 1) {
        return read;
      }
      String[] written = Arrays.copyOfRange(words, first, words.length - 1);
      return sameButForLetters(read, written) ? written : read;
    } catch (IOException e) {
      return read;
    }
  }

  private static boolean sameButForLetters(String[] read, String[] written) {
    for (int i = 0; i < read.length; i++) {
      if (!FileNames.isLost(read[i]) && !read[i].equals(written[i])) {
        return false;
      }
    }
    return true;
  }
}
