package strikeoff.policy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The words of the trade with their meanings, from {@code rules/GLOSSARY.md}: a table of Markdown,
 * so that people read the very file that reports, schema and {@code explain} are filled from.
 */
public final class Glossary {

  private static final String FILE = "/rules/GLOSSARY.md";

  private static volatile Map<String, String> words;

  private Glossary() {}

  /** Meanings by word, in the order of the file. */
  public static Map<String, String> all() {
    Map<String, String> known = words;
    if (known == null) {
      known = Collections.unmodifiableMap(read());
      words = known;
    }
    return known;
  }

  /** What a word means, however it is written: {@code Frame safe} too. */
  public static Optional<String> word(String written) {
    String word = written.strip().toLowerCase(Locale.ROOT);
    return all().keySet().stream()
        .filter(
            known ->
                known.equalsIgnoreCase(word)
                    || known.replace('-', ' ').equals(word.replace('-', ' ')))
        .findFirst();
  }

  private static Map<String, String> read() {
    try (InputStream in = Glossary.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: " + FILE);
      }
      Map<String, String> read = new LinkedHashMap<>();
      boolean rows = false;
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\r?\n")) {
        int second = line.indexOf('|', 1);
        if (rows && second > 0) {
          String meaning = line.substring(second + 1, line.lastIndexOf('|')).strip();
          read.put(line.substring(1, second).strip(), meaning);
        }
        rows |= line.startsWith("|---");
      }
      return read;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
