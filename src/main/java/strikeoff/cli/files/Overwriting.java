package strikeoff.cli.files;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Surroundings;
import strikeoff.report.PageMark;
import strikeoff.report.json.JsonMark;
import strikeoff.report.junit.JunitMark;
import strikeoff.report.outcome.PlanTable;

/**
 * Keeps what a run writes apart from what it reads, from what people wrote themselves, and from one
 * another. A name may have been mistyped, or handed in by somebody who means no good.
 */
public final class Overwriting {

  /** Files that people write for this program. */
  private static final Set<String> WRITTEN_BY_PEOPLE = Set.of("yaml", "yml", "dslr", "drl", "dsl");

  private static final String PAINT = "(?:\\x1B\\[[0-9;]*m)*";

  /** The line of a plan in a text, as far as every plan has it. */
  private static final String VERDICT =
      PAINT + "(?:PRINTABLE|NOT PRINTABLE|UNREADABLE|NOT CHECKED)" + PAINT + " ";

  /** How plans are counted, which is said at the end. */
  private static final String COUNT =
      "[0-9]+ plans?(?:\\n|:(?:\\n|\\s+[0-9]+\\s+(?:not\\s+)?(?:printable|unreadable|checked)\\b))";

  private static final Predicate<String> TEXT_BEGINS =
      found("\\A(?:" + VERDICT + "|" + COUNT + ")");

  private static final Predicate<String> TEXT_ENDS = found("\\A" + COUNT);

  private static final Predicate<String> COMPARISON_ENDS =
      found("(?:\\A|\\n)[0-9]+ mended, [0-9]+ left, [0-9]+ new\\.\\n\\z");

  /** Verdicts alone, a plan in a line. */
  private static final Pattern VERDICTS =
      Pattern.compile(
          "(?:"
              + VERDICT
              + " *[^\\n]+: (?:nothing found[^\\n]*|a mistake at line [0-9]+"
              + "|[0-9]+ (?:stop|accepted stop|risk|piece|mistake)[^\\n]*)\\n"
              + "|"
              + PAINT
              + "NOT CHECKED"
              + PAINT
              + "    [^\\n]+: [^\\n]+\\n)+");

  /** Bytes of a file that are looked at, from its beginning or up to its end. */
  private static final int LOOKED_AT = 8192;

  private Overwriting() {}

  private static Predicate<String> found(String pattern) {
    return Pattern.compile(pattern, Pattern.DOTALL).asPredicate();
  }

  /**
   * Why these can't be written.
   *
   * @param wanted formats and their files
   * @param pages files of the reports, if any are written
   * @param sources tells what the run reads, and is asked only if something is written
   */
  public static Optional<String> refusal(
      Surroundings here,
      List<Output> wanted,
      Collection<Path> pages,
      Supplier<? extends Collection<Path>> sources) {
    if (pages.isEmpty() && wanted.stream().allMatch(output -> output.file().isEmpty())) {
      return Optional.empty();
    }
    ReadFiles read = ReadFiles.of(sources.get());
    Map<Path, String> places = new HashMap<>();
    for (Path page : pages) {
      String name = FileNames.text(page);
      if (read.has(page)) {
        return Optional.of(name + ": this is read, and no report is written over it");
      }
      places.put(place(page), name);
    }
    for (Output output : wanted) {
      if (output.file().isEmpty()) {
        continue;
      }
      String name = output.file().get();
      try {
        Path file = here.resolve(name).toAbsolutePath();
        Optional<String> why =
            read.has(file)
                ? Optional.of("this is read, and no result is written over it")
                : noPlace(file).or(() -> otherKind(output.format(), file));
        if (why.isPresent()) {
          return Optional.of(name + ": " + why.get());
        }
        if (places.put(place(file), name) != null && !isDevice(file)) {
          return Optional.of(name + ": two results can't go to one file");
        }
      } catch (InvalidPathException e) {
        return Optional.of(name + ": not a path");
      }
    }
    return Optional.empty();
  }

  /** A link that leads nowhere would become a file; a pipe waits for whoever reads it. */
  private static Optional<String> noPlace(Path file) {
    if (Files.isSymbolicLink(file) && !Files.exists(file)) {
      return OddFile.what(file).map(what -> what + "; name another file");
    }
    return OddFile.isPipe(file) && !HandedOver.takes(file)
        ? Optional.of("it is a pipe; name a file, or what a shell hands over as >(command)")
        : Optional.empty();
  }

  /** What holds something else is hardly meant. */
  private static Optional<String> otherKind(String format, Path file) {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    if (WRITTEN_BY_PEOPLE.contains(ending(place(file)))) {
      return Optional.of("a plan, a policy or rules stand here already; name another file");
    }
    String begins = beginning(file);
    return begins.isBlank() && isAll(file) || isEarlier(format, file, begins)
        ? Optional.empty()
        : Optional.of(
            "a file that holds no "
                + format
                + " of an earlier run stands here already; name another, or delete it");
  }

  /** True if a file's beginning is the whole of it; one that can't be read holds who knows what. */
  private static boolean isAll(Path file) {
    try {
      return Files.isReadable(file) && Files.size(file) <= LOOKED_AT;
    } catch (IOException e) {
      return false;
    }
  }

  private static boolean isEarlier(String format, Path file, String begins) {
    return switch (format) {
      case "json" -> is(file, JsonMark::stands);
      case "sarif" -> is(file, JsonMark::standsSarif);
      case "junit" -> is(file, JunitMark::stands);
      case "csv" -> begins.startsWith(PlanTable.HEAD);
      case Output.RUN_PAGE -> PageMark.PROPOSE.stands(begins);
      case Output.TEXT -> isText(begins, end(file));
      default -> PageMark.COMPARE.stands(begins);
    };
  }

  private static boolean is(Path file, Predicate<InputStream> mark) {
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
      return mark.test(in);
    } catch (IOException e) {
      return false;
    }
  }

  private static boolean isText(String begins, String ends) {
    String whole = begins.substring(0, begins.lastIndexOf('\n') + 1);
    int last = ends.lastIndexOf("\n\n");
    return TEXT_BEGINS.test(begins) && TEXT_ENDS.test(last < 0 ? ends : ends.substring(last + 2))
        || COMPARISON_ENDS.test(ends)
        || VERDICTS.matcher(whole).matches();
  }

  private static String ending(Path file) {
    String name = FileNames.last(file);
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  /** How a file begins; empty if it can't be read. */
  static String beginning(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readNBytes(LOOKED_AT), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return "";
    }
  }

  private static String end(Path file) {
    try (SeekableByteChannel in = Files.newByteChannel(file)) {
      in.position(Math.max(0, in.size() - LOOKED_AT));
      return new String(Channels.newInputStream(in).readNBytes(LOOKED_AT), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return "";
    }
  }

  /**
   * What a run reads: a thousand pages are not held against a thousand plans each.
   *
   * @param keys by which the system knows the files
   * @param unkeyed files of a system that has no such keys
   */
  private record ReadFiles(Set<Object> keys, List<Path> unkeyed) {

    static ReadFiles of(Collection<Path> files) {
      Set<Object> keys = new HashSet<>();
      List<Path> unkeyed = new ArrayList<>();
      for (Path file : files) {
        key(file).ifPresentOrElse(keys::add, () -> unkeyed.add(file));
      }
      return new ReadFiles(keys, unkeyed);
    }

    private static Optional<Object> key(Path file) {
      try {
        return Optional.ofNullable(Files.readAttributes(file, BasicFileAttributes.class).fileKey());
      } catch (IOException e) {
        return Optional.empty();
      }
    }

    boolean has(Path file) {
      return Files.exists(file)
          && !isDevice(file)
          && (key(file).filter(keys::contains).isPresent()
              || unkeyed.stream().anyMatch(r -> same(r, file)));
    }
  }

  private static boolean isDevice(Path file) {
    return Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file);
  }

  private static boolean same(Path one, Path other) {
    try {
      return Files.isSameFile(one, other);
    } catch (IOException e) {
      return false;
    }
  }

  /** Where links lead, as far as there is something. */
  private static Path place(Path file) {
    Path whole = file.toAbsolutePath().normalize();
    try {
      return whole.toRealPath();
    } catch (IOException e) {
      Path folder = whole.getParent();
      return folder == null ? whole : place(folder).resolve(whole.getFileName());
    }
  }
}
