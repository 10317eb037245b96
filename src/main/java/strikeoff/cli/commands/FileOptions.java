package strikeoff.cli.commands;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.util.Optional;
import strikeoff.cli.text.Surroundings;

/**
 * Files that are called like options. A shell puts the names of handed-in files where it finds
 * {@code *}, and one called {@code --policy=mine.yaml} would run somebody's rules.
 */
final class FileOptions {

  private static final String LAST_OPTION = "--";

  private FileOptions() {}

  /** What is wrong with the first option that is also a file here; empty if none is. */
  static Optional<String> likeAFile(Surroundings here, String... args) {
    for (String word : args) {
      if (word.equals(LAST_OPTION)) {
        break;
      }
      if (word.startsWith("-") && word.length() > 1 && isFile(here, word)) {
        return Optional.of(
            "a file is called “"
                + word
                + "” and may have been taken for an option; ./"
                + word
                + " is the file, and the option is known only where there is none");
      }
    }
    return Optional.empty();
  }

  private static boolean isFile(Surroundings here, String word) {
    try {
      return Files.exists(here.resolve(word));
    } catch (InvalidPathException e) {
      return false;
    }
  }
}
