package strikeoff.cli.files;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.cli.text.FileNames;

/**
 * Writes files each whole or not at all: whoever reads one meanwhile sees the old one or the new
 * one.
 */
public final class WholeFile {

  /** The half of a file, until it takes the file's name: {@code .NAME.PROCESS.part}. */
  private static final Pattern HALF = Pattern.compile("\\.(.+)\\.([0-9]{1,18})\\.part");

  /** Somebody who clears the folder for another machine may take this one's half for a dead one. */
  private static final int TRIES = 3;

  private WholeFile() {}

  /**
   * Replaces an earlier file in a single move.
   *
   * @throws IOException if it can't be written; an earlier file then stands as it was
   */
  public static void write(Path file, byte[] bytes) throws IOException {
    write(file, bytes, WholeFile::replace);
  }

  /**
   * Writes a file where nothing stands, not even a link that leads nowhere.
   *
   * @throws FileAlreadyExistsException if something does, which then stands as it was
   * @throws IOException if it can't be written; then nothing stands there
   */
  public static void writeNew(Path file, byte[] bytes) throws IOException {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileAlreadyExistsException(FileNames.text(file));
    }
    clearHalves(file);
    write(file, bytes, Files::move);
  }

  /** How the half takes the file's name. */
  private interface Move {
    void of(Path from, Path to) throws IOException;
  }

  private static void write(Path file, byte[] bytes, Move move) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    needed(folder, Optional.ofNullable(file.getParent()).orElse(folder));
    String name = "." + FileNames.last(file) + "." + ProcessHandle.current().pid() + ".part";
    Path half = FileNames.resolve(folder, name);
    for (int left = TRIES; left > 0; left--) {
      try {
        Files.deleteIfExists(half);
        Files.write(half, bytes, StandardOpenOption.CREATE_NEW);
        move.of(half, file);
        return;
      } catch (NoSuchFileException e) {
        if (left == 1) {
          throw e;
        }
      } finally {
        Files.deleteIfExists(half);
      }
    }
  }

  /** The system's own words name neither the folder nor that it is one. */
  private static void needed(Path folder, Path asNamed) throws IOException {
    if (Files.notExists(folder)) {
      throw new IOException("the folder " + FileNames.text(asNamed) + " isn't there");
    }
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new IOException(FileNames.text(asNamed) + " is no folder");
    }
  }

  private static void replace(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Takes away what killed runs left half written of a file. */
  public static void clearHalves(Path file) {
    clear(file.toAbsolutePath().getParent(), FileNames.last(file)::equals);
  }

  /**
   * Takes away the halves that runs left which were killed. Call it before this run writes there.
   *
   * @param ours true for the name of a file whose halves may go
   */
  static void clear(Path folder, Predicate<String> ours) {
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, ".*.part")) {
      for (Path entry : entries) {
        Matcher half = HALF.matcher(FileNames.last(entry));
        if (half.matches()
            && ours.test(half.group(1))
            && !isInWork(entry, Long.parseLong(half.group(2)))) {
          Files.deleteIfExists(entry);
        }
      }
    } catch (IOException | RuntimeException e) {
      // What can't be cleared harms nobody: nothing reads it.
    }
  }

  /** Numbers of processes come again: one that began later than the half is another. */
  private static boolean isInWork(Path half, long process) throws IOException {
    if (process == ProcessHandle.current().pid()) {
      return false;
    }
    Instant written = Files.getLastModifiedTime(half).toInstant();
    return ProcessHandle.of(process)
        .map(p -> p.info().startInstant().map(start -> !start.isAfter(written)).orElse(true))
        .orElse(false);
  }
}
