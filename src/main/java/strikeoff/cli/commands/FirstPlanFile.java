package strikeoff.cli.commands;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.WholeFile;
import strikeoff.cli.text.Surroundings;

/**
 * Where a first plan is written: into a file that isn't there yet.
 *
 * @param name as the user gave it, if it was given
 */
record FirstPlanFile(Surroundings here, Optional<String> name) {

  /**
   * The folder that the plan is to lie in.
   *
   * @throws InvalidPathException if the name is no path
   */
  Path folder() {
    Path file = here.resolve(name.orElse("plan"));
    return Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file.getRoot());
  }

  /** Whether another name is one in that folder; what is no path is told when it is written. */
  boolean isBeside(String other) {
    try {
      return folder().equals(here.resolve(other).toAbsolutePath().getParent());
    } catch (InvalidPathException e) {
      return true;
    }
  }

  /** Writes a plan's text into a file: what kept it from that, if anything did. */
  Optional<String> write(String file, String text) {
    try {
      WholeFile.writeNew(here.resolve(file), text.getBytes(StandardCharsets.UTF_8));
      return Optional.empty();
    } catch (FileAlreadyExistsException e) {
      return Optional.of(file + ": this file is there already, and stays as it is");
    } catch (InvalidPathException e) {
      return Optional.of(file + ": not a path");
    } catch (IOException e) {
      return Optional.of(file + ": this file can't be written: " + FileTrouble.of(e));
    }
  }
}
