package strikeoff.cli;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.PatternSyntaxException;

/**
 * Finds the plans that a command line means: files as they are named, folders searched through for
 * {@code .yaml} and {@code .yml}, and patterns. Each file once, in the order of the arguments and
 * by name within a folder. Hidden files and folders are left out unless named.
 */
final class PlanFiles {

  /** Deeper trees are no studio's. */
  private static final int DEEPEST = 40;

  /** Stands for standard input; a file of that name is written ./- */
  private static final String STANDARD_INPUT = "-";

  private final Surroundings here;
  private final int most;
  private final String inputName;
  private final List<PlanFile> found = new ArrayList<>();
  private final List<String> wrong = new ArrayList<>();
  private final List<String> closed = new ArrayList<>();
  private final Set<Path> files = new HashSet<>();
  private Set<Path> folders = new HashSet<>();
  private Optional<Path> given = Optional.empty();

  private PlanFiles(Surroundings here, int most, String inputName) {
    this.here = here;
    this.most = most;
    this.inputName = inputName;
  }

  /**
   * A file to check.
   *
   * @param name as the user would write it
   * @param given the folder that it was found in, if a folder was given
   */
  record PlanFile(Path path, String name, Optional<Path> given) {

    /** A file that was named itself. */
    PlanFile(Path path, String name) {
      this(path, name, Optional.empty());
    }

    /** By its name, which two files seldom share. */
    @Override
    public int hashCode() {
      return name.hashCode();
    }

    /** True if the plan comes from standard input and its path says nothing. */
    boolean isStandardInput() {
      return path.toString().equals(STANDARD_INPUT);
    }
  }

  /**
   * What was found.
   *
   * @param wrong arguments that lead to no plan, one line each
   * @param closed folders that can't be read, one line each
   */
  record Found(List<PlanFile> plans, List<String> wrong, List<String> closed) {}

  /**
   * Finds plans.
   *
   * @param most how many to take at most; more is reported as wrong
   * @param inputName what the plan from standard input is called
   */
  static Found of(List<String> arguments, Surroundings here, int most, String inputName) {
    PlanFiles search = new PlanFiles(here, most, inputName);
    for (String argument : arguments) {
      search.add(argument);
    }
    return new Found(
        List.copyOf(search.found), List.copyOf(search.wrong), List.copyOf(search.closed));
  }

  private void add(String argument) {
    if (argument.isBlank()) {
      // An unset variable of a script, which must not come to mean this folder.
      wrong.add("an empty argument names no plan");
      return;
    }
    if (argument.equals(STANDARD_INPUT)) {
      PlanFile input = new PlanFile(Path.of(STANDARD_INPUT), inputName);
      if (!found.contains(input)) {
        found.add(input);
      }
      return;
    }
    try {
      Path path = here.resolve(argument);
      folders = new HashSet<>();
      given = Optional.of(path).filter(Files::isDirectory);
      if (Files.isDirectory(path)) {
        int before = files.size() + closed.size();
        search(path, strip(argument), PlanFiles::isPlan, 0);
        if (files.size() + closed.size() == before && !anyKnown(path)) {
          wrong.add(argument + ": no .yaml or .yml file in this folder");
        }
      } else if (Files.exists(path)) {
        take(path, argument);
      } else if (isPattern(argument)) {
        match(argument);
      } else {
        wrong.add(argument + ": no such file or folder");
      }
    } catch (InvalidPathException e) {
      wrong.add(argument + ": not a path");
    }
  }

  /** True if the folder's plans were found already by an earlier argument. */
  private boolean anyKnown(Path folder) {
    try {
      Path real = folder.toRealPath();
      return files.stream().anyMatch(f -> f.startsWith(real));
    } catch (IOException e) {
      return false;
    }
  }

  private static boolean isPattern(String argument) {
    return argument.chars().anyMatch(c -> "*?[{".indexOf(c) >= 0);
  }

  /** Searches the folder above the first wildcard for all that the pattern matches. */
  private void match(String pattern) {
    int wild = 0;
    while ("*?[{".indexOf(pattern.charAt(wild)) < 0) {
      wild++;
    }
    int slash = pattern.lastIndexOf('/', wild);
    String base = slash < 0 ? "" : pattern.substring(0, Math.max(1, slash));
    Path folder = base.isEmpty() ? here.resolve("") : here.resolve(base);
    int before = files.size() + closed.size();
    try {
      PathMatcher matcher = folder.getFileSystem().getPathMatcher("glob:" + pattern);
      // As in a shell, ** may stand for no folder at all.
      PathMatcher here =
          folder.getFileSystem().getPathMatcher("glob:" + pattern.replace("**/", ""));
      if (Files.isDirectory(folder)) {
        search(folder, base, path -> matcher.matches(path) || here.matches(path), 0);
      }
    } catch (PatternSyntaxException e) {
      wrong.add(pattern + ": not a pattern: " + e.getDescription());
      return;
    }
    if (files.size() + closed.size() == before) {
      wrong.add(pattern + ": matches no file");
    }
  }

  private void search(Path folder, String name, Predicate<Path> wanted, int depth) {
    List<Path> entries = new ArrayList<>();
    try {
      // A folder that a link leads back to has been searched already.
      if (depth > DEEPEST || !folders.add(folder.toRealPath())) {
        return;
      }
      try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
        stream.forEach(entries::add);
      }
    } catch (IOException | RuntimeException e) {
      closed.add((name.isEmpty() ? "." : name) + ": this folder can't be read");
      return;
    }
    entries.sort(Comparator.comparing(entry -> entry.getFileName().toString()));
    for (Path entry : entries) {
      String last = entry.getFileName().toString();
      String full = name.isEmpty() ? last : name.endsWith("/") ? name + last : name + "/" + last;
      if (last.startsWith(".")) {
        continue;
      }
      if (Files.isDirectory(entry)) {
        search(entry, full, wanted, depth + 1);
      } else if (wanted.test(Path.of(full))
          && !last.equals(PolicyFiles.NAME)
          && Files.isRegularFile(entry)) {
        take(entry, full);
      }
    }
  }

  private static boolean isPlan(Path path) {
    String lower = path.getFileName().toString().toLowerCase(Locale.ROOT);
    return lower.endsWith(".yaml") || lower.endsWith(".yml");
  }

  private void take(Path path, String name) {
    Path real;
    try {
      real = path.toRealPath();
    } catch (IOException e) {
      real = path.toAbsolutePath().normalize();
    }
    if (files.contains(real)) {
      return;
    }
    if (found.size() == most) {
      if (files.add(Path.of(""))) {
        wrong.add("more than " + most + " plans; --max-plans takes more at once");
      }
      return;
    }
    files.add(real);
    found.add(new PlanFile(path, name, given));
  }

  private static String strip(String folder) {
    String name = folder;
    while (name.length() > 1 && name.endsWith("/")) {
      name = name.substring(0, name.length() - 1);
    }
    return name.equals(".") ? "" : name;
  }
}
