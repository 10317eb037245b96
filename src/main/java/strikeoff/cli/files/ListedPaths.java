package strikeoff.cli.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.check.FileTrouble;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Surroundings;
import strikeoff.document.Bounds;
import strikeoff.plan.yaml.PlanMark;
import strikeoff.units.Phrase;

/**
 * Paths that another program listed, as a version control system lists all that changed: one a
 * line, or with a zero behind each. What is no plan is passed over.
 *
 * @param plans names of plans, in the order of the list
 * @param gone names of what isn't there, or not any more
 * @param others names of what is no plan
 * @param policies names of policies: they are no plans, but plans may have to be checked for them
 * @param closed plans that can't be read, one line each
 */
public record ListedPaths(
    List<String> plans,
    List<String> gone,
    List<String> others,
    List<String> policies,
    List<String> closed) {

  /** Stands for standard input. */
  public static final String STANDARD_INPUT = "-";

  private static final int MOST_BYTES = 16 << 20;

  /** Names told of each kind; the rest is counted. */
  private static final int MOST_TOLD = 5;

  /** As C writes strings: how git lists names with letters beyond ASCII, unless asked for -z. */
  private static final Pattern ESCAPE = Pattern.compile("\\\\([0-7]{3}|.)");

  /** Why a list can't be read, and how the program then ends. */
  public static final class Unfit extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Exit exit;

    Unfit(String message, Exit exit) {
      super(message);
      this.exit = exit;
    }

    public Exit exit() {
      return exit;
    }
  }

  /** What no list names. */
  public static ListedPaths none() {
    return new ListedPaths(List.of(), List.of(), List.of(), List.of(), List.of());
  }

  /**
   * Reads a list, and looks at what it names.
   *
   * @param file its name, or {@link #STANDARD_INPUT}
   */
  public static ListedPaths read(Surroundings here, String file) throws Unfit {
    ListedPaths paths =
        new ListedPaths(
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>());
    for (String name : names(bytes(here, file), here)) {
      paths.add(name, here);
    }
    return paths;
  }

  private static byte[] bytes(Surroundings here, String file) throws Unfit {
    try {
      if (file.equals(STANDARD_INPUT)) {
        return bounded(here.in(), "standard input");
      }
      Path path = here.resolve(file);
      Optional<String> odd = OddFile.whatNamed(path);
      if (odd.isPresent()) {
        throw new IOException(odd.get());
      }
      try (InputStream in = Files.newInputStream(path)) {
        return bounded(in, file);
      }
    } catch (NoSuchFileException | InvalidPathException e) {
      throw new Unfit(file + ": no such file", Exit.USAGE);
    } catch (IOException e) {
      throw new Unfit(
          (file.equals(STANDARD_INPUT) ? "standard input" : file)
              + ": this list can't be read: "
              + FileTrouble.of(e),
          Exit.FAULT);
    }
  }

  private static byte[] bounded(InputStream in, String name) throws IOException, Unfit {
    byte[] bytes = in.readNBytes(MOST_BYTES + 1);
    if (bytes.length > MOST_BYTES) {
      throw new Unfit(name + ": a list of more than " + (MOST_BYTES >> 20) + " MiB", Exit.USAGE);
    }
    return bytes;
  }

  private static Set<String> names(byte[] bytes, Surroundings here) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    boolean zeros = text.indexOf('\0') >= 0;
    Set<String> names = new LinkedHashSet<>();
    for (String line : text.split(zeros ? "\0" : "\r?\n")) {
      if (!line.isBlank()) {
        names.add(zeros || exists(line, here) ? line : unquoted(line));
      }
    }
    return names;
  }

  private static boolean exists(String name, Surroundings here) {
    try {
      return Files.exists(here.resolve(name), LinkOption.NOFOLLOW_LINKS);
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private static String unquoted(String line) {
    if (line.length() < 2 || !line.startsWith("\"") || !line.endsWith("\"")) {
      return line;
    }
    String within = line.substring(1, line.length() - 1);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Matcher escape = ESCAPE.matcher(within);
    int from = 0;
    while (escape.find()) {
      bytes.writeBytes(within.substring(from, escape.start()).getBytes(StandardCharsets.UTF_8));
      String code = escape.group(1);
      int letter = "abtnvfr".indexOf(code);
      bytes.write(
          code.length() == 3
              ? Integer.parseInt(code, 8)
              : letter >= 0 ? 7 + letter : code.charAt(0));
      from = escape.end();
    }
    bytes.writeBytes(within.substring(from).getBytes(StandardCharsets.UTF_8));
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private void add(String name, Surroundings here) {
    if (FileNames.isLost(name)) {
      closed.add(name + ": this name in the list is not in UTF-8");
      return;
    }
    try {
      Path path = here.resolve(name);
      if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
        gone.add(name);
      } else if (FileNames.last(path).equals(PolicyFiles.NAME)) {
        policies.add(name);
      } else if (!PlanFiles.isPlan(name) || isHidden(name) || Files.isDirectory(path)) {
        others.add(name);
      } else {
        plan(path, name, here);
      }
    } catch (InvalidPathException e) {
      closed.add(name + ": not a path");
    }
  }

  /**
   * A list may have been made of what somebody handed in: links lead no further than found ones.
   */
  private void plan(Path path, String name, Surroundings here) {
    Path folder = here.resolve("").toAbsolutePath().normalize();
    Path whole = path.toAbsolutePath().normalize();
    Optional<String> odd =
        OddFile.whatFound(path, whole.startsWith(folder) ? folder : whole.getParent());
    if (odd.isPresent()) {
      closed.add(name + ": " + odd.get() + "; name it itself to have it read");
      return;
    }
    try (InputStream in = Files.newInputStream(path)) {
      (PlanMark.stands(in.readNBytes(Bounds.USUAL.bytes() + 1)) ? plans : others).add(name);
    } catch (IOException e) {
      // The check says why.
      plans.add(name);
    }
  }

  /** As in folders that are searched: what a version control system or an editor keeps there. */
  private static boolean isHidden(String name) {
    for (String part : name.split("/")) {
      if (part.startsWith(".") && !part.equals(".") && !part.equals("..")) {
        return true;
      }
    }
    return false;
  }

  /** What was listed and isn't checked, though it might have been meant. */
  public List<String> missed() {
    List<String> notes = new ArrayList<>();
    if (!gone.isEmpty()) {
      notes.add("listed and not there (renamed or deleted?), so not checked: " + some(gone));
    }
    if (!policies.isEmpty()) {
      notes.add(
          some(policies)
              + (policies.size() == 1 ? ": a policy, no plan" : ": policies, no plans")
              + "; check the folder to judge all that it holds for anew");
    }
    return notes;
  }

  /** What was listed and is no plan. */
  public List<String> skipped() {
    return others.isEmpty()
        ? List.of()
        : List.of("listed and no " + (others.size() == 1 ? "plan: " : "plans: ") + some(others));
  }

  private static String some(List<String> names) {
    List<String> told = new ArrayList<>(names.subList(0, Math.min(MOST_TOLD, names.size())));
    if (names.size() > MOST_TOLD) {
      told.add((names.size() - MOST_TOLD) + " more");
    }
    return Phrase.list(told);
  }
}
