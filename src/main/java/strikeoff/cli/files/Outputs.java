package strikeoff.cli.files;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import strikeoff.cli.text.Surroundings;
import strikeoff.units.Spelling;

/**
 * All that a run writes. Text goes to standard output unless another format does, or unless it has
 * a file of its own.
 *
 * @param <R> what is written
 */
public final class Outputs<R> {

  private final Surroundings here;
  private final Map<String, Function<R, String>> formats;
  private final List<Output> wanted;
  private final Optional<StringWriter> kept;
  private final PrintWriter text;

  /**
   * @param formats how to write each, besides text
   */
  public Outputs(Surroundings here, Map<String, Function<R, String>> formats, List<Output> wanted) {
    this.here = here;
    this.formats = formats;
    this.wanted = wanted;
    Optional<Output> named = wanted.stream().filter(o -> o.isText()).findFirst();
    boolean taken = wanted.stream().anyMatch(o -> o.file().isEmpty() && !o.isText());
    this.kept =
        named.flatMap(Output::file).isPresent()
            ? Optional.of(new StringWriter())
            : Optional.empty();
    this.text =
        kept.isPresent()
            ? new PrintWriter(kept.get())
            : taken ? new PrintWriter(Writer.nullWriter()) : here.out();
  }

  /** Why these can't be written together, if so. */
  public static Optional<String> clash(Collection<String> formats, List<Output> wanted) {
    List<String> known = new ArrayList<>(List.of(Output.TEXT));
    known.addAll(formats);
    for (Output output : wanted) {
      if (!known.contains(output.format())) {
        return Optional.of(
            "no format is called “"
                + output.format()
                + "”"
                + Spelling.didYouMean(output.format(), known)
                + "; there are "
                + String.join(", ", known));
      }
    }
    if (wanted.stream().filter(o -> o.file().isEmpty()).count() > 1) {
      return Optional.of("only one --format can go to standard output; give the others a file");
    }
    if (wanted.stream().filter(o -> o.isText()).count() > 1) {
      return Optional.of("--format text can be given once");
    }
    return Optional.empty();
  }

  /** Where text is told. */
  public PrintWriter text() {
    return text;
  }

  /** True unless another format takes the place of text. */
  public boolean textIsTold() {
    return textIsShown() || kept.isPresent();
  }

  /** True if a person may be reading the text on a terminal. */
  public boolean textIsShown() {
    return text == here.out();
  }

  /** True if results have to be kept to the end. */
  public boolean needResults() {
    return wanted.stream().anyMatch(o -> !o.isText());
  }

  /** True if results are wanted in that format. */
  public boolean wants(String format) {
    return wanted.stream().anyMatch(o -> o.format().equals(format));
  }

  /**
   * Writes all but the text that was told already, also the text that has a file of its own.
   *
   * @param results asked for if a format needs them
   * @param failed takes each file that can't be written, with the reason
   */
  public void write(Supplier<R> results, BiConsumer<String, IOException> failed) {
    Optional<R> needed = needResults() ? Optional.of(results.get()) : Optional.empty();
    for (Output output : wanted) {
      if (output.isText()) {
        kept.ifPresent(k -> save(output.file().orElseThrow(), k.toString(), failed));
      } else {
        String written = formats.get(output.format()).apply(needed.orElseThrow());
        if (output.file().isPresent()) {
          save(output.file().get(), written, failed);
        } else {
          here.out().print(written);
          here.out().flush();
        }
      }
    }
  }

  private void save(String file, String written, BiConsumer<String, IOException> failed) {
    try {
      Path path = here.resolve(file).toAbsolutePath().normalize();
      if (Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path)) {
        // A pipe or a device takes what is written; a move would put a file in its place.
        Files.write(path, written.getBytes(StandardCharsets.UTF_8), StandardOpenOption.WRITE);
        return;
      }
      if (Files.isRegularFile(path)) {
        // A link goes on leading to its file.
        path = path.toRealPath();
      }
      Path folder = path.getParent();
      Files.createDirectories(folder);
      WholeFile.clearHalves(path);
      WholeFile.write(path, written.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      failed.accept(file, e);
    }
  }
}
