package strikeoff.yaml;

import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import strikeoff.document.Bounds;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;

/**
 * Reads YAML from people nobody vouches for: bounded in size, depth and number of values, without
 * anchors, tags or merge keys, and with every fault as a located problem.
 */
public final class YamlReader {

  /** More slips of the kinds that stop the parser nobody mends in one go. */
  private static final int MOST_MENDS = 40;

  /** Bounds the work on long files that are no YAML at all, in characters. */
  private static final int MOST_READ_AGAIN = 4_000_000;

  private YamlReader() {}

  /** Sets up what the first plan needs. */
  public static void prepare() {
    read("plan: none");
  }

  /** Reads a file's bytes, which must be UTF-8. Never throws on any input. */
  public static YamlReading read(byte[] bytes, Bounds bounds) {
    return read(bytes, bounds, List.of());
  }

  /**
   * The same of a text whose reader misses the value of some keys by itself.
   *
   * @param phrases keys that begin an item of a list: one without its colon, above other keys, is
   *     read as it was meant and not told, since its reader tells it
   */
  public static YamlReading read(byte[] bytes, Bounds bounds, List<String> phrases) {
    if (bytes.length > bounds.bytes()) {
      return tooLong(bounds);
    }
    Problems problems = new Problems();
    Optional<String> text = new TextDecoder(problems).decode(bytes);
    return text.isPresent()
        ? read(text.get(), problems, bounds, phrases)
        : new YamlReading.Faulty(problems.sorted(), List.of(), Optional.empty(), true);
  }

  /** Reads a text within the usual bounds. Never throws on any input. */
  public static YamlReading read(String text) {
    return read(text, List.of());
  }

  /** The same with the phrases of {@link #read(byte[], Bounds, List)}. */
  public static YamlReading read(String text, List<String> phrases) {
    return text.length() > Bounds.USUAL.bytes()
        ? tooLong(Bounds.USUAL)
        : read(TextDecoder.withoutMark(text), new Problems(), Bounds.USUAL, phrases);
  }

  /** Reads a file's bytes within the usual bounds. Never throws on any input. */
  public static YamlReading read(byte[] bytes) {
    return read(bytes, Bounds.USUAL);
  }

  private static YamlReading tooLong(Bounds bounds) {
    Problems problems = new Problems();
    problems.add(
        new Position(1, 1),
        PlanPath.ROOT,
        "the file is larger than " + bounds.kib() + " KiB; no plan written by hand is");
    return new YamlReading.Faulty(problems.sorted(), List.of(), Optional.empty(), true);
  }

  private static YamlReading read(
      String text, Problems problems, Bounds bounds, List<String> phrases) {
    List<String> lines = TextDecoder.lines(text);
    Mended mended = new Mended(lines, phrases);
    if (!new TextDecoder(problems).clean(mended)) {
      return new YamlReading.Faulty(problems.sorted(), lines, Optional.empty(), true);
    }
    boolean partial = false;
    for (int mends = 0; ; mends++) {
      Problems inside = new Problems();
      Outcome outcome = compose(mended, inside, bounds);
      Optional<Fault> fault = outcome.fault();
      if (fault.isEmpty() || mends == MOST_MENDS || mends * text.length() > MOST_READ_AGAIN) {
        fault.ifPresent(
            f -> problems.add(mended.original(f.at()), PlanPath.ROOT, words(f, mended)));
        if (!partial || outcome.root().isPresent()) {
          problems.addAll(inside);
        }
        Optional<Node> root = outcome.root().map(mended::original);
        return root.isPresent() && problems.none()
            ? new YamlReading.Document(root.get(), lines)
            : new YamlReading.Faulty(problems.sorted(), lines, root, partial);
      }
      Optional<Slips.Slip> slip = outcome.slip().or(() -> Slips.mend(fault.get(), mended));
      if (slip.isPresent() && slip.get().message().isEmpty()) {
        continue;
      }
      if (slip.isPresent()) {
        problems.add(slip.get().at(), PlanPath.ROOT, slip.get().message());
      } else {
        partial = true;
        Fault f = fault.get();
        problems.add(mended.original(f.at()), PlanPath.ROOT, words(f, mended));
        if (!leaveOut(f, mended)) {
          return new YamlReading.Faulty(problems.sorted(), lines, Optional.empty(), true);
        }
      }
    }
  }

  /**
   * Takes a fault that nobody understands out of the text, so that the rest can be read; false if
   * there is nothing left to take out.
   */
  private static boolean leaveOut(Fault fault, Mended text) {
    boolean inside =
        List.of("flow", "quoted", "simple key").stream().anyMatch(fault.context()::contains);
    boolean some = false;
    for (int n = inside ? fault.from().line() : fault.at().line(); n <= fault.at().line(); n++) {
      some |= !text.line(n).isBlank();
      text.blank(n);
    }
    return some;
  }

  private static String words(Fault f, Mended text) {
    return SyntaxWords.of(f, text.original(f.from()));
  }

  /**
   * What came of parsing once.
   *
   * @param fault where the parser or the composer gave up
   * @param slip what the composer saw there, mended already
   */
  private record Outcome(Optional<Node> root, Optional<Fault> fault, Optional<Slips.Slip> slip) {

    static Outcome of(Fault fault) {
      return new Outcome(Optional.empty(), Optional.of(fault), Optional.empty());
    }
  }

  private static Outcome compose(Mended text, Problems problems, Bounds bounds) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(bounds.bytes() + 1);
    Composer composer =
        new Composer(
            new ParserImpl(new StreamReader(text.text()), options), text, problems, bounds);
    try {
      Optional<Node> root = composer.document();
      return composer.slip().isPresent()
          ? new Outcome(root, composer.fault(), composer.slip())
          : new Outcome(root, Optional.empty(), Optional.empty());
    } catch (YAMLException e) {
      return Outcome.of(fault(e, text.lines()));
    }
  }

  private static Fault fault(YAMLException e, List<String> lines) {
    Position start = new Position(1, 1);
    if (!(e instanceof MarkedYAMLException m)) {
      return new Fault(String.valueOf(e.getMessage()), "", start, start);
    }
    Position at = place(m.getProblemMark(), lines).orElse(start);
    return new Fault(
        m.getProblem() == null ? "" : m.getProblem(),
        m.getContext() == null ? "" : m.getContext(),
        place(m.getContextMark(), lines).orElse(at),
        at);
  }

  private static Optional<Position> place(Mark mark, List<String> lines) {
    return mark == null
        ? Optional.empty()
        : Optional.of(place(mark.getLine(), mark.getColumn(), lines));
  }

  /** From the parser's count of characters to UTF-16 units, which editors and this tool count. */
  static Position place(int line, int column, List<String> lines) {
    if (line >= lines.size()) {
      // The parser points past the last line break; the last line is what people can see.
      int last = lines.size();
      while (last > 1 && lines.get(last - 1).isBlank()) {
        last--;
      }
      return new Position(last, lines.get(last - 1).length() + 1);
    }
    String text = lines.get(Math.max(0, line));
    int all = text.codePointCount(0, text.length());
    int points = Math.min(Math.max(0, column), all);
    int units = all == text.length() ? points : text.offsetByCodePoints(0, points);
    return new Position(Math.max(0, line) + 1, units + 1);
  }
}
