package strikeoff.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import strikeoff.cli.PlanFiles.PlanFile;

/** The folder that reports are written into, each whole or not at all. */
final class ReportFolder {

  static final String INDEX = "index.html";

  private static final int LONGEST_NAME = 80;

  /** Names that some file systems keep for devices, and our own index. */
  private static final Set<String> TAKEN =
      Set.of("index", "con", "prn", "aux", "nul", "com1", "com2", "com3", "lpt1", "lpt2", "lpt3");

  private final Path folder;

  ReportFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * Makes the folder if it isn't there.
   *
   * @throws IOException if it can't be made
   */
  void make() throws IOException {
    Files.createDirectories(folder);
  }

  /**
   * A file name for each plan: letters, digits and hyphens of the plan's own file name, all small,
   * so that no two are one file where case doesn't count and none leads out of the folder.
   */
  static Map<PlanFile, String> names(List<PlanFile> plans) {
    Map<PlanFile, String> names = new LinkedHashMap<>();
    Set<String> used = new HashSet<>(TAKEN);
    for (PlanFile plan : plans) {
      String stem = stem(plan.name());
      String name = stem;
      for (int next = 2; !used.add(name); next++) {
        name = stem + "-" + next;
      }
      names.put(plan, name + ".html");
    }
    return names;
  }

  private static String stem(String file) {
    String last = file.substring(file.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
    String stem =
        last.replaceFirst("\\.ya?ml$", "").replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String cut = stem.length() > LONGEST_NAME ? stem.substring(0, LONGEST_NAME) : stem;
    return cut.isEmpty() ? "plan" : cut;
  }

  /**
   * Writes one file, replacing an earlier one in a single move: whoever reads it meanwhile sees the
   * old one or the new one.
   *
   * @throws IOException if it can't be written; an earlier file then stands as it was
   */
  void write(String name, String text) throws IOException {
    write(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * The same with a text that is UTF-8 already.
   *
   * @throws IOException if it can't be written; an earlier file then stands as it was
   */
  void write(String name, byte[] utf8) throws IOException {
    Path half = folder.resolve("." + name + "." + ProcessHandle.current().pid() + ".part");
    try {
      Files.deleteIfExists(half);
      Files.write(half, utf8, StandardOpenOption.CREATE_NEW);
      move(half, folder.resolve(name));
    } finally {
      Files.deleteIfExists(half);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
