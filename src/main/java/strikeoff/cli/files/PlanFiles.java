package strikeoff.cli.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.PatternSyntaxException;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Surroundings;

/**
 * Finds the plans that a command line means: files as they are named, folders searched through for
 * {@code .yaml} and {@code .yml}, and patterns. Each file once, in the order of the arguments and
 * by name within a folder. Hidden files and folders are left out unless named.
 */
public final class PlanFiles {

  /** What somebody does who has more plans than a command takes that has this option. */
  public static final String MAX_PLANS = "--max-plans takes more at once";

  /** The same where there is none. */
  public static final String FEWER = "name fewer at once";

  /** Deeper trees are no studio's. */
  private static final int DEEPEST = 40;

  /** Stands for standard input; a file of that name is written ./- */
  private static final String STANDARD_INPUT = "-";

  private final Surroundings here;
  private final int most;
  private final String otherwise;
  private final String inputName;

  /** By where links lead, so that each is checked once. */
  private final Map<Path, PlanFile> found = new LinkedHashMap<>();

  private final List<String> wrong = new ArrayList<>();
  private final List<String> closed = new ArrayList<>();
  private boolean tooMany;

  /** Folders that links lead to, which are searched last: most have a name of their own. */
  private final List<Runnable> linked = new ArrayList<>();

  private Set<Path> folders = new HashSet<>();

  /** The folder that is searched with all below it. */
  private Path top = Path.of("");

  /** Files that arguments led to, also those that others had led to. */
  private int met;

  private Optional<Path> given = Optional.empty();

  private PlanFiles(Surroundings here, int most, String otherwise, String inputName) {
    this.here = here;
    this.most = most;
    this.otherwise = otherwise;
    this.inputName = inputName;
  }

  /**
   * A file to check.
   *
   * @param name as the user would write it
   * @param given the folder that it was found in, if a folder was given
   */
  public record PlanFile(Path path, String name, Optional<Path> given) {

    /** A file that was named itself. */
    public PlanFile(Path path, String name) {
      this(path, name, Optional.empty());
    }

    /** By its name, which two files seldom share. */
    @Override
    public int hashCode() {
      return name.hashCode();
    }

    /** True if the plan comes from standard input and its path says nothing. */
    public boolean isStandardInput() {
      return path.toString().equals(STANDARD_INPUT);
    }
  }

  /**
   * What was found.
   *
   * @param wrong arguments that lead to no plan, one line each
   * @param closed what looks like a plan or a folder and can't be read, one line each
   */
  public record Found(List<PlanFile> plans, List<String> wrong, List<String> closed) {}

  /**
   * Finds plans.
   *
   * @param most how many to take at most; more is reported as wrong
   * @param otherwise what somebody does who has more
   * @param inputName what the plan from standard input is called
   */
  public static Found of(
      List<String> arguments, Surroundings here, int most, String otherwise, String inputName) {
    PlanFiles search = new PlanFiles(here, most, otherwise, inputName);
    for (String argument : arguments) {
      search.add(argument);
    }
    return new Found(
        List.copyOf(search.found.values()), List.copyOf(search.wrong), List.copyOf(search.closed));
  }

  private void add(String argument) {
    if (argument.isBlank()) {
      // An unset variable of a script, which must not come to mean this folder.
      wrong.add("an empty argument names no plan");
      return;
    }
    if (argument.equals(STANDARD_INPUT)) {
      PlanFile input = new PlanFile(Path.of(STANDARD_INPUT), inputName);
      found.putIfAbsent(input.path(), input);
      return;
    }
    if (FileNames.isLost(argument)) {
      closed.add(
          argument
              + ": this name has letters that can't be read in the locale of this shell;"
              + " LC_ALL=C.UTF-8 has them");
      return;
    }
    try {
      Path path = here.resolve(argument);
      folders = new HashSet<>();
      given = Optional.of(path).filter(Files::isDirectory);
      if (Files.isDirectory(path)) {
        int before = met + closed.size();
        top = path;
        searchAll(path, strip(argument), Sought.IN_A_FOLDER);
        if (met + closed.size() == before) {
          // A shell finds a folder that is called like a plan among the plans of a class.
          (isPlan(strip(argument)) ? closed : wrong)
              .add(argument + ": no .yaml or .yml file in this folder");
        }
      } else if (OddFile.whatNamed(path).isPresent()) {
        closed.add(argument + ": " + OddFile.whatNamed(path).get());
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
    int before = met + closed.size();
    try {
      Predicate<String> deep = matching(folder, pattern);
      // As in a shell, ** may stand for no folder at all.
      Predicate<String> here = matching(folder, pattern.replace("**/", ""));
      if (Files.isDirectory(folder)) {
        top = folder;
        searchAll(folder, base, new Sought(deep.or(here), name -> false, reaching(pattern)));
      }
    } catch (PatternSyntaxException e) {
      wrong.add(pattern + ": not a pattern: " + e.getDescription());
      return;
    }
    if (met + closed.size() == before) {
      wrong.add(pattern + ": matches no file");
    }
  }

  private static Predicate<String> matching(Path folder, String pattern) {
    FileSystem files = folder.getFileSystem();
    PathMatcher matcher = files.getPathMatcher("glob:" + FileNames.sayable(pattern));
    return name -> matcher.matches(files.getPath(FileNames.sayable(name)));
  }

  /** Names of folders that may hold what the pattern matches. */
  private static Predicate<String> reaching(String pattern) {
    return name -> pattern.contains("**") || slashes(name) < slashes(pattern);
  }

  private static long slashes(String name) {
    return name.chars().filter(c -> c == '/').count();
  }

  /**
   * What matters, by name.
   *
   * @param wanted files
   * @param missed links also if they lead nowhere
   * @param folders folders also if they aren't searched
   */
  private record Sought(
      Predicate<String> wanted, Predicate<String> missed, Predicate<String> folders) {

    static final Sought IN_A_FOLDER =
        new Sought(PlanFiles::isPlan, PlanFiles::mayBeFolder, name -> true);
  }

  /** Takes what is wanted in a folder that was named and below it. */
  private void searchAll(Path folder, String name, Sought sought) {
    linked.clear();
    search(folder, name, sought, 0);
    for (int i = 0; i < linked.size(); i++) {
      linked.get(i).run();
    }
  }

  /** Takes what is wanted below a folder. What is wanted and can't be read is told. */
  private void search(Path folder, String name, Sought sought, int depth) {
    List<Path> entries = new ArrayList<>();
    try {
      if (depth > DEEPEST) {
        closed.add(name + ": more than " + DEEPEST + " folders deep, and not searched");
        return;
      }
      // A folder that a link leads back to has been searched already.
      if (!folders.add(folder.toRealPath())) {
        return;
      }
      try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
        stream.forEach(entries::add);
      }
    } catch (IOException | RuntimeException e) {
      closed.add((name.isEmpty() ? "." : name) + ": this folder can't be read");
      return;
    }
    entries.sort(Comparator.comparing(FileNames::last));
    for (Path entry : entries) {
      String last = FileNames.last(entry);
      String full = name.isEmpty() ? last : name.endsWith("/") ? name + last : name + "/" + last;
      if (last.startsWith(".")) {
        continue;
      }
      if (Files.isDirectory(entry)) {
        if (!OddFile.leadsOut(entry, top)) {
          if (Files.isSymbolicLink(entry)) {
            linked.add(() -> search(entry, full, sought, depth + 1));
          } else {
            search(entry, full, sought, depth + 1);
          }
        } else if (sought.folders().test(full)) {
          closed.add(full + ": " + OddFile.LEADS_OUT);
        }
      } else if (last.equals(PolicyFiles.NAME)) {
        continue;
      } else if (Files.isRegularFile(entry)) {
        if (sought.wanted().test(full)) {
          OddFile.whatFound(entry, top)
              .ifPresentOrElse(
                  what -> closed.add(full + ": " + what + "; name it itself to have it read"),
                  () -> take(entry, full));
        }
      } else if (sought.wanted().test(full)
          || (sought.missed().test(full) && Files.isSymbolicLink(entry))) {
        OddFile.what(entry).ifPresent(what -> closed.add(full + ": " + what));
      }
    }
  }

  static boolean isPlan(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.endsWith(".yaml") || lower.endsWith(".yml");
  }

  /** A link without an ending may have led to a folder of plans. */
  private static boolean mayBeFolder(String name) {
    return name.indexOf('.', name.lastIndexOf('/') + 1) < 0;
  }

  private void take(Path path, String name) {
    met++;
    Path real;
    try {
      real = path.toRealPath();
    } catch (IOException e) {
      real = path.toAbsolutePath().normalize();
    }
    PlanFile file = new PlanFile(path, name, given);
    PlanFile before = found.get(real);
    if (before != null) {
      // Nobody's plan is told under the name of somebody else's link to it alone.
      if (isLinked(before, real) && !isLinked(file, real)) {
        found.remove(real);
        found.put(real, file);
      }
    } else if (found.size() < most) {
      found.put(real, file);
    } else if (!tooMany) {
      tooMany = true;
      wrong.add("more than " + (most == 1 ? "one plan" : most + " plans") + "; " + otherwise);
    }
  }

  private static boolean isLinked(PlanFile file, Path real) {
    return !file.path().toAbsolutePath().normalize().equals(real);
  }

  private static String strip(String folder) {
    String name = folder;
    while (name.length() > 1 && name.endsWith("/")) {
      name = name.substring(0, name.length() - 1);
    }
    return name.equals(".") ? "" : name;
  }
}
