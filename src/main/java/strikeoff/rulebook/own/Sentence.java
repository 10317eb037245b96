package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.units.Parsed;

/**
 * One sentence of the vocabulary.
 *
 * @param words with gaps in braces; one that begins with {@code "- "} says more about what a
 *     sentence before it is about
 * @param type what it is about
 * @param condition what the engine compares, with the same gaps
 * @param gaps their names, in order
 * @param shape what a line must look like to be this sentence
 */
record Sentence(String words, Class<?> type, String condition, List<String> gaps, Pattern shape) {

  private static final Pattern GAP = Pattern.compile("\\{([a-z]+[0-9]?)}");

  Sentence {
    gaps = List.copyOf(gaps);
  }

  /**
   * @throws IllegalArgumentException if a gap has no known kind
   */
  static Sentence of(String words, Class<?> type, String condition) {
    List<String> gaps = new ArrayList<>();
    StringBuilder shape = new StringBuilder();
    String said = words.startsWith("- ") ? words.substring(2) : words;
    Matcher gap = GAP.matcher(said);
    int from = 0;
    while (gap.find()) {
      shape.append(literal(said.substring(from, gap.start())));
      String name = gap.group(1);
      gaps.add(name);
      shape.append(
          Kind.of(name)
              .orElseThrow(() -> new IllegalArgumentException("no gap is called {" + name + "}"))
              .regex());
      from = gap.end();
    }
    shape.append(literal(said.substring(from)));
    int flags = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
    return new Sentence(words, type, condition, gaps, Pattern.compile(shape.toString(), flags));
  }

  private static String literal(String text) {
    StringBuilder regex = new StringBuilder();
    for (String part : text.split("(?<=\\s)|(?=\\s)")) {
      regex.append(part.isBlank() ? (part.isEmpty() ? "" : "\\s+") : Pattern.quote(part));
    }
    return regex.toString();
  }

  boolean isMore() {
    return words.startsWith("- ");
  }

  /** The words that a line must have. */
  String said() {
    return isMore() ? words.substring(2) : words;
  }

  /** The words with a value in each gap. */
  String example() {
    return GAP.matcher(said())
        .replaceAll(gap -> Matcher.quoteReplacement(Kind.of(gap.group(1)).orElseThrow().example()));
  }

  /** The condition for a text that is this sentence; empty if it isn't. */
  Optional<Parsed<String>> read(String text) {
    Matcher match = shape.matcher(text);
    if (!match.matches()) {
      return Optional.empty();
    }
    String filled = condition;
    for (int i = 0; i < gaps.size(); i++) {
      Parsed<String> value = Kind.of(gaps.get(i)).orElseThrow().read(match.group(i + 1));
      if (value instanceof Parsed.Refused<String> refused) {
        return Optional.of(
            Parsed.refused(
                "in “" + text + "”, " + refused.message() + "; the sentence is “" + said() + "”"));
      }
      filled = filled.replace("{" + gaps.get(i) + "}", value.toOptional().orElseThrow());
    }
    return Optional.of(Parsed.value(filled));
  }
}
