package strikeoff.yaml;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.yaml.JacksonYAMLParseException;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import strikeoff.plan.Bounds;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Position;

/**
 * Reads YAML from people nobody vouches for: bounded in size, depth and number of values, without
 * anchors, tags or merge keys, and with every fault as a located problem.
 */
public final class YamlReader {

  private YamlReader() {}

  /**
   * Sets up what the first plan needs: on JDK 25 the parser's tables of large numbers alone take as
   * long as reading a plan.
   */
  public static void prepare() {
    read("plan: none");
  }

  /** Reads a file's bytes, which must be UTF-8. Never throws on any input. */
  public static YamlReading read(byte[] bytes, Bounds bounds) {
    if (bytes.length > bounds.bytes()) {
      return tooLong(bounds);
    }
    Problems problems = new Problems();
    String text = new TextDecoder(problems).decode(bytes);
    return problems.none()
        ? read(text, problems, bounds)
        : new YamlReading.Faulty(problems.sorted(), TextDecoder.lines(text));
  }

  /** Reads a text within the usual bounds. Never throws on any input. */
  public static YamlReading read(String text) {
    return text.length() > Bounds.USUAL.bytes()
        ? tooLong(Bounds.USUAL)
        : read(TextDecoder.withoutMark(text), new Problems(), Bounds.USUAL);
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
    return new YamlReading.Faulty(problems.sorted(), List.of());
  }

  private static YamlReading read(String text, Problems problems, Bounds bounds) {
    List<String> lines = TextDecoder.lines(text);
    if (new TextDecoder(problems).isClean(text)) {
      Optional<Node> root = compose(text, lines, problems, bounds);
      if (root.isPresent() && problems.none()) {
        return new YamlReading.Document(root.get(), lines);
      }
    }
    return new YamlReading.Faulty(problems.sorted(), lines);
  }

  private static Optional<Node> compose(
      String text, List<String> lines, Problems problems, Bounds bounds) {
    try (YAMLParser parser = factory(bounds).createParser(text)) {
      return new Composer(parser, lines, problems, bounds).document();
    } catch (JsonProcessingException e) {
      syntax(e, lines, problems);
    } catch (YAMLException e) {
      report(e, new Position(1, 1), lines, problems);
    } catch (IOException e) {
      throw new IllegalStateException("reading from memory cannot fail", e);
    }
    return Optional.empty();
  }

  /** Every limit is stated here; the libraries' own defaults may change with their versions. */
  private static YAMLFactory factory(Bounds bounds) {
    int most = bounds.bytes() + 1;
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(most);
    options.setNestingDepthLimit(bounds.depth() + 10);
    options.setMaxAliasesForCollections(0);
    return YAMLFactory.builder()
        .loaderOptions(options)
        .streamReadConstraints(
            StreamReadConstraints.builder()
                .maxNestingDepth(bounds.depth() + 10)
                .maxDocumentLength(most)
                .maxStringLength(most)
                .maxNameLength(most)
                // Numbers stay text here and are judged where they are read as quantities.
                .maxNumberLength(most)
                .build())
        .build();
  }

  private static void syntax(JsonProcessingException e, List<String> lines, Problems problems) {
    JsonLocation location = e.getLocation();
    Position at =
        location == null || location.getLineNr() < 1
            ? new Position(1, 1)
            : place(location.getLineNr() - 1, location.getColumnNr() - 1, lines);
    if (e instanceof JacksonYAMLParseException && e.getCause() instanceof YAMLException cause) {
      report(cause, at, lines, problems);
      return;
    }
    String message = e.getOriginalMessage();
    problems.add(
        at,
        PlanPath.ROOT,
        message.contains("field name")
            ? "a key must be a single word or a few; a list or a mapping stands here"
            : SyntaxWords.of(message, "", at, at, lines));
  }

  private static void report(
      YAMLException e, Position fallback, List<String> lines, Problems problems) {
    if (e instanceof MarkedYAMLException m) {
      Position at = place(m.getProblemMark(), lines).orElse(fallback);
      Position from = place(m.getContextMark(), lines).orElse(at);
      String problem = m.getProblem() == null ? "" : m.getProblem();
      String context = m.getContext() == null ? "" : m.getContext();
      String words = SyntaxWords.of(problem, context, from, at, lines);
      problems.add(words.equals(SyntaxWords.UNCLOSED) ? from : at, PlanPath.ROOT, words);
    } else {
      String words = String.valueOf(e.getMessage());
      problems.add(fallback, PlanPath.ROOT, SyntaxWords.of(words, "", fallback, fallback, lines));
    }
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
