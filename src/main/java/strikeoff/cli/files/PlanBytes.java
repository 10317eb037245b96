package strikeoff.cli.files;

import static java.nio.file.attribute.PosixFilePermission.OWNER_WRITE;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import java.util.Optional;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Surroundings;
import strikeoff.document.Bounds;

/**
 * A plan's file as it was read, to be written again with another text.
 *
 * @param bytes as they were read, one more than are taken in at most
 */
public record PlanBytes(PlanFile plan, byte[] bytes) {

  private static final String MARK = "\ufeff";

  /** Reads it, or what comes from standard input. */
  public static PlanBytes read(PlanFile plan, Surroundings here) throws IOException {
    try (InputStream in = plan.isStandardInput() ? here.in() : Files.newInputStream(plan.path())) {
      return new PlanBytes(plan, in.readNBytes(Bounds.USUAL.bytes() + 1));
    }
  }

  private String all() {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /**
   * Its text, without a byte-order mark.
   *
   * @return nothing if it is none: written again, it would hold other bytes than those that nobody
   *     can read
   */
  public Optional<String> text() {
    String all = all();
    return Arrays.equals(all.getBytes(StandardCharsets.UTF_8), bytes)
        ? Optional.of(all.startsWith(MARK) ? all.substring(1) : all)
        : Optional.empty();
  }

  private byte[] with(String text) {
    return (all().startsWith(MARK) ? MARK + text : text).getBytes(StandardCharsets.UTF_8);
  }

  /**
   * What a link leads to is changed, not the link; and only what is as it was when it was read.
   *
   * @throws IOException if it can't be, as {@link #mayBeReplaced} tells or for another reason
   */
  public void replace(String text) throws IOException {
    mayBeReplaced();
    Path file = plan.path().toRealPath();
    if (!Arrays.equals(Files.readAllBytes(file), bytes)) {
      throw new IOException("somebody else has changed it meanwhile");
    }
    PosixFileAttributeView rights = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    var before = rights == null ? null : rights.readAttributes().permissions();
    WholeFile.clearHalves(file);
    WholeFile.write(file, with(text));
    if (before != null) {
      Files.setPosixFilePermissions(file, before);
    }
  }

  /**
   * Another file is moved over it, which a system allows where it would refuse to change the file,
   * and to its administrator always.
   *
   * @throws IOException if its owner locked it, or it has a second name that would keep the old
   *     text
   */
  public void mayBeReplaced() throws IOException {
    Path file = plan.path().toRealPath();
    PosixFileAttributeView rights = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    boolean locked = rights != null && !rights.readAttributes().permissions().contains(OWNER_WRITE);
    if (locked || !Files.isWritable(file)) {
      throw new IOException("the file is write-protected");
    }
    if (otherNames(file) > 0) {
      throw new IOException(
          "the file has another name too (a hard link), which would keep the old text");
    }
  }

  /** Hard links beside this name; 0 where the system doesn't tell. */
  private static int otherNames(Path file) throws IOException {
    return file.getFileSystem().supportedFileAttributeViews().contains("unix")
        ? (Integer) Files.getAttribute(file, "unix:nlink") - 1
        : 0;
  }

  /** Where it would be written anew: under its own name if that is a folder. */
  public Path placed(Path place, boolean folder) {
    return folder || Files.isDirectory(place)
        ? FileNames.resolve(place, FileNames.last(plan.path()))
        : place;
  }

  /** Writes another text where nothing stands yet, under its own name if that is a folder. */
  public void writeNew(String text, Path place, boolean folder) throws IOException {
    Path file = placed(place, folder);
    if (folder) {
      Files.createDirectories(place);
    }
    try {
      WholeFile.writeNew(file, with(text));
    } catch (FileAlreadyExistsException e) {
      throw new IOException("something stands at " + FileNames.text(file) + " already", e);
    }
  }
}
